import type { BodyOf, KindName } from '#core/journal/fold.ts'
import type { World } from '../action.ts'
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
 * Keeps what an owner sent through the link. Sent twice under one id it is kept once. Returns false when the animal is not
 * named, the id is none, or the store refused it.
 */
export async function keepOwners<Name extends KindName>(
  opened: OpenedLink,
  sent: OwnersWriting<Name>,
  { store }: Pick<World, 'store'>,
): Promise<boolean> {
  const entry = ownerEntry(opened, sent)
  if (!entry) return false
  const [kept] = await store.accept(opened.link.clinic, [entry], opened.now)
  return kept?.outcome === 'accepted' || kept?.outcome === 'already'
}
