import type { Side } from '#core/animal/species.ts'
import type { Entry, Subject } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { type Filed, type Tray, trayStream } from '#core/tray/tray.ts'
import { momentAgain } from '../../journal/moment-again.ts'
import { makeEntry, type Pen } from '../../journal/write-entry.ts'

/** Something that waits. */
export type Arrived = Tray['waiting'][number]

/** Where something from the tray goes. */
type Place = { readonly stream: string; readonly animal: string; readonly side: Side | null }

/** What it is, as the person who filed it says. */
type Named =
  | { readonly kind: 'paper'; readonly body: BodyOf<'paper'> }
  | { readonly kind: 'photograph'; readonly body: BodyOf<'photograph'> }

const clinic = { kind: 'clinic' } as const

/** The entry in the case, and the one that closes the item in the tray and says where it went. Kept together. */
export function file(pen: Pen, arrived: Arrived, place: Place, named: Named, reason: string): Entry[] {
  const { stream, animal, side } = place
  const subject: Subject = side === null ? { kind: 'animal', animal } : { kind: 'ear', animal, side }
  const { id, attachments } = arrived.header
  const about = { stream, subject, happenedAt: momentAgain(arrived), attachments, reason }
  const made =
    named.kind === 'paper'
      ? makeEntry(pen, { ...about, kind: 'paper', body: named.body })
      : makeEntry(pen, { ...about, kind: 'photograph', body: named.body })
  const copy = { ...made, refiledFrom: id }
  const body = { toStream: stream, toSubject: subject, copy: copy.id }
  return [copy, makeEntry(pen, { kind: 'refile', stream: trayStream, subject: clinic, body, withdraws: id, reason })]
}

/** Takes a wrong filing back: the copy leaves the case, the item waits in the tray again. */
export function takeBack(pen: Pen, { refile }: Filed, reason: string): Entry[] {
  const { toStream, toSubject, copy } = refile.body
  const body = { because: 'wrong-animal' } as const
  return [
    makeEntry(pen, { kind: 'withdrawal', stream: toStream, subject: toSubject, body, withdraws: copy, reason }),
    makeEntry(pen, {
      kind: 'withdrawal',
      stream: trayStream,
      subject: clinic,
      body,
      withdraws: refile.header.id,
      reason,
    }),
  ]
}

/** For what belongs to no animal. It stays in the history of the tray. */
export function throwAway(pen: Pen, arrived: Arrived, reason: string): Entry[] {
  const body = { because: 'other' } as const
  const { id } = arrived.header
  return [makeEntry(pen, { kind: 'withdrawal', stream: trayStream, subject: clinic, body, withdraws: id, reason })]
}
