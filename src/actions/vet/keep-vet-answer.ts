import { vetLinkRules } from '#content/follow-up/vet-link-rules.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import type { Entry, Subject } from '#core/journal/entry.ts'
import { entryId } from '#core/journal/entry-id.ts'
import { type BodyOf, type KindName, kindNamed } from '#core/journal/fold.ts'
import { dayOf, startOfDay } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'
import type { ReadAnswer } from '#core/vet/read-answer.ts'
import type { World } from '../action.ts'
import { hashOf } from '../people/caller.ts'
import type { OpenedVetLink } from './open-vet-link.ts'

/**
 * Keeps what a practice sent: a check for each ear that was seen, and the answer that names them. The ids follow from the
 * link and from what was sent, so that the same send arrives once however often it is sent. `too-many` when this link was
 * answered often enough for one day.
 */
export async function keepVetAnswer(
  opened: OpenedVetLink,
  sent: ReadAnswer,
  { store }: Pick<World, 'store'>,
): Promise<'kept' | 'too-many' | 'not-kept'> {
  const { link, file, now } = opened
  const { zone } = file.clinic
  const animal = animalIn(file)
  const known = (id: string) => file.theCase.line(id) !== undefined
  const clock: Moment = { at: now, zone, precision: 'minute', by: 'clock' }
  const onDay: Moment | null =
    sent.day === null ? null : { at: startOfDay(sent.day, zone), zone, precision: 'day', by: 'person' }
  const looks = onDay
    ? sent.ears.map(({ side, body }) => entryOf(opened, 'check', { kind: 'ear', animal, side }, body, onDay))
    : []
  const body: BodyOf<'vet-answer'> = {
    asked: link.asked,
    examinedBy: sent.examinedBy,
    looks: looks.map(({ id }) => id),
    saysDied: sent.saysDied,
    text: sent.text,
  }
  const answer = entryOf(opened, 'vet-answer', { kind: 'animal', animal }, body, clock)
  const entries = [...looks, answer].filter(({ id }) => !known(id))
  if (entries.length === 0) return 'kept'
  const today = dayOf({ at: now, zone })
  const answeredToday = file.theCase
    .live('vet-answer')
    .filter(({ header }) => header.device.id === link.id && dayOf({ at: header.writtenAt, zone }) === today)
  if (answeredToday.length >= vetLinkRules.answersInADay.value) return 'too-many'
  const kept = await store.accept(link.clinic, entries, now)
  return kept.every(({ outcome }) => outcome === 'accepted' || outcome === 'already') ? 'kept' : 'not-kept'
}

function entryOf<Name extends KindName>(
  { link, now }: OpenedVetLink,
  kind: Name,
  subject: Subject,
  body: BodyOf<Name>,
  happenedAt: Moment,
): Entry {
  // The moment of sending is no part of it: the same words about the same day are the same answer.
  const when = happenedAt.by === 'person' ? happenedAt.at : null
  const said = canonical({ link: link.id, kind, subject, body: body as unknown as Json, when })
  return {
    id: entryId(Date.parse(link.madeAt), bytesOf(hashOf(said))),
    clinic: link.clinic,
    stream: link.stream,
    subject,
    kind,
    version: kindNamed(kind)?.version ?? 1,
    body: body as unknown as Json,
    happenedAt,
    writtenAt: now,
    author: { kind: 'referring-vet', contact: link.contact },
    // The machine of another practice is no device of the house: the time is the server's own, and nothing of it is kept.
    device: { id: link.id, boot: link.id, wallClock: now, monotonicMs: 0, offset: { ms: 0, ageMs: 0 } },
    supersedes: [],
    withdraws: null,
    refiledFrom: null,
    attachments: [],
    reason: null,
  }
}

/** Ten bytes of a hash written in hexadecimal. */
function bytesOf(hash: string): Uint8Array {
  return Uint8Array.from({ length: 10 }, (_, at) => Number.parseInt(hash.slice(at * 2, at * 2 + 2), 16))
}
