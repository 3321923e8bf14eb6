import type { BodyOf } from '#core/journal/fold.ts'
import type { World } from '../action.ts'
import type { OpenedLink } from './open-owner-link.ts'
import { ownerEntry } from './owner-entry.ts'

/**
 * Keeps what an owner sent through the link as an entry of the case, written by that link. Sent twice under one id it is
 * kept once. Returns false when the animal is not named or the id is none.
 */
export async function keepWishes(
  opened: OpenedLink,
  sent: { readonly id: string; readonly body: BodyOf<'owner-wishes'> },
  { store }: Pick<World, 'store'>,
): Promise<boolean> {
  const entry = ownerEntry(opened, { kind: 'owner-wishes', ...sent })
  if (!entry) return false
  const [kept] = await store.accept(opened.link.clinic, [entry], opened.now)
  return kept?.outcome === 'accepted' || kept?.outcome === 'already'
}
