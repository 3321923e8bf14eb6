import { animalOf } from '#core/chapters/ears.ts'
import type { Json } from '#core/journal/canonical.ts'
import { type Entry, entryIdSchema } from '#core/journal/entry.ts'
import { type BodyOf, type KindName, kindNamed } from '#core/journal/fold.ts'
import type { OpenedLink } from './open-owner-link.ts'

/**
 * What an owner sent through the link as an entry of the case, written by that link, at this moment. Null when the animal
 * is not named or the id is none.
 */
export function ownerEntry<Name extends KindName>(
  { link, file, now }: OpenedLink,
  sent: {
    readonly kind: Name
    readonly id: string
    readonly body: BodyOf<NoInfer<Name>>
    readonly attachments?: Entry['attachments']
    /** The entry that it takes the place of, and why; null when it stands beside all others. */
    readonly corrects?: { readonly entry: string; readonly reason: string } | null
  },
): Entry | null {
  const animal = animalOf(file.theCase)
  const id = entryIdSchema.safeParse(sent.id)
  if (animal === null || !id.success) return null
  return {
    id: id.data,
    clinic: link.clinic,
    stream: link.stream,
    subject: { kind: 'animal', animal },
    kind: sent.kind,
    version: kindNamed(sent.kind)?.version ?? 1,
    body: sent.body as unknown as Json,
    happenedAt: { at: now, zone: file.clinic.zone, precision: 'minute', by: 'clock' },
    writtenAt: now,
    author: { kind: 'owner-link', contact: link.contact },
    // The phone of an owner is no device of the house: the time is the server's own, and nothing of the phone is kept.
    device: { id: link.id, boot: link.id, wallClock: now, monotonicMs: 0, offset: { ms: 0, ageMs: 0 } },
    supersedes: sent.corrects ? [sent.corrects.entry] : [],
    withdraws: null,
    refiledFrom: null,
    attachments: sent.attachments ?? [],
    reason: sent.corrects?.reason ?? null,
  }
}
