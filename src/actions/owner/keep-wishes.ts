import { animalOf } from '#core/chapters/ears.ts'
import type { Json } from '#core/journal/canonical.ts'
import { type Entry, entryIdSchema } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { kindNamed } from '#core/journal/fold.ts'
import type { World } from '../action.ts'
import type { OpenedLink } from './open-owner-link.ts'

/**
 * Keeps what an owner sent through the link as an entry of the case, written by that link. Sent twice under one id it is
 * kept once. Returns false when the animal is not named or the id is none.
 */
export async function keepWishes(
  { link, file, now }: OpenedLink,
  sent: { readonly id: string; readonly body: BodyOf<'owner-wishes'> },
  { store }: Pick<World, 'store'>,
): Promise<boolean> {
  const animal = animalOf(file.theCase)
  const id = entryIdSchema.safeParse(sent.id)
  if (animal === null || !id.success) return false
  const entry: Entry = {
    id: id.data,
    clinic: link.clinic,
    stream: link.stream,
    subject: { kind: 'animal', animal },
    kind: 'owner-wishes',
    version: kindNamed('owner-wishes')?.version ?? 1,
    body: sent.body as unknown as Json,
    happenedAt: { at: now, zone: file.clinic.zone, precision: 'minute', by: 'clock' },
    writtenAt: now,
    author: { kind: 'owner-link', contact: link.contact },
    // The phone of an owner is no device of the house: the time is the server's own, and nothing of the phone is kept.
    device: { id: link.id, boot: link.id, wallClock: now, monotonicMs: 0, offset: { ms: 0, ageMs: 0 } },
    supersedes: [],
    withdraws: null,
    refiledFrom: null,
    attachments: [],
    reason: null,
  }
  const [kept] = await store.accept(link.clinic, [entry], now)
  return kept?.outcome === 'accepted' || kept?.outcome === 'already'
}
