import { canonical, type Json } from '#core/journal/canonical.ts'
import type { BodyOf, KindName } from '#core/journal/fold.ts'
import type { World } from '../action.ts'
import { linkedCase } from '../people/linked-case.ts'
import type { OpenedLink } from './open-owner-link.ts'
import { ownerEntry } from './owner-entry.ts'

/** What an owner sent, under the id that stood in the form. */
export type OwnersWriting<Name extends KindName> = {
  readonly id: string
  readonly kind: Name
  readonly body: BodyOf<NoInfer<Name>>
  readonly corrects: { readonly entry: string; readonly reason: string } | null
}

/**
 * Keeps what an owner sent through the link. Sent again under one id it is kept once, however much later and whatever was
 * written since: a phone sends again when the answer to it was lost. Returns false when the animal is not named, the id is
 * none or something else stands under it, or the store refused it.
 */
export async function keepOwners<Name extends KindName>(
  opened: OpenedLink,
  sent: OwnersWriting<Name>,
  { store }: Pick<World, 'store'>,
): Promise<boolean> {
  if (standsThere(opened, opened.file, sent)) return true
  const entry = ownerEntry(opened, sent)
  if (!entry) return false
  const [kept] = await store.accept(opened.link.clinic, [entry], opened.now)
  if (kept?.outcome === 'accepted' || kept?.outcome === 'already') return true
  // The same may have come twice at once: the other one is in the record now.
  const again = (await linkedCase({ store }, opened.link.clinic, opened.link.stream)).file
  return again !== null && standsThere(opened, again, sent)
}

/** Whether this very thing was kept before: by this person, under this id, word for word. */
function standsThere<Name extends KindName>(
  { link }: OpenedLink,
  { theCase }: OpenedLink['file'],
  { id, kind, body }: OwnersWriting<Name>,
): boolean {
  const line = theCase.line(id)
  if (!line || line.header.kind !== kind || line.header.author.kind !== 'owner-link') return false
  if (line.header.author.contact !== link.contact) return false
  return canonical(line.body as Json) === canonical(body as unknown as Json)
}
