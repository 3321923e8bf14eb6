import type { Json } from '#core/journal/canonical.ts'
import type { Entry, Subject } from '#core/journal/entry.ts'
import { type BodyOf, type KindName, kindNamed } from '#core/journal/fold.ts'
import type { Moment } from '#core/time/moment.ts'
import { deviceNow, newId } from './device.ts'
import { keepEntries } from './outbox.ts'

/** What a screen says of an entry it writes; the rest comes from the device and the person at it. */
export type Writing<Name extends KindName> = {
  readonly kind: Name
  readonly stream: string
  readonly subject: Subject
  readonly body: BodyOf<NoInfer<Name>>
  /** When it happened, if a person said so; otherwise now, by this device's clock. */
  readonly happenedAt?: Moment | null
  readonly supersedes?: readonly string[]
  readonly withdraws?: string
  readonly reason?: string | null
  readonly attachments?: Entry['attachments']
  /** The entry on this device that the server refused and that this one is written instead of. */
  readonly insteadOf?: string | null
}

export type Pen = { readonly clinic: string; readonly person: string; readonly zone: string }

/** Makes the entry and keeps it on this device; it is sent by itself. Resolves with the entry once it is on disk here. */
export async function writeEntry<Name extends KindName>(pen: Pen, writing: Writing<Name>): Promise<Entry> {
  const entry = makeEntry(pen, writing)
  await keepEntries([entry], [], writing.insteadOf ?? null)
  return entry
}

export function makeEntry<Name extends KindName>(pen: Pen, writing: Writing<Name>): Entry {
  const now = new Date().toISOString()
  return {
    id: newId(),
    clinic: pen.clinic,
    stream: writing.stream,
    subject: writing.subject,
    kind: writing.kind,
    version: kindNamed(writing.kind)?.version ?? 1,
    body: writing.body as unknown as Json,
    happenedAt: writing.happenedAt ?? { at: now, zone: pen.zone, precision: 'second', by: 'clock' },
    writtenAt: now,
    author: { kind: 'person', person: pen.person },
    device: deviceNow(),
    supersedes: [...(writing.supersedes ?? [])],
    withdraws: writing.withdraws ?? null,
    refiledFrom: null,
    attachments: writing.attachments ?? [],
    reason: writing.reason ?? null,
  }
}
