import type { BodyOf } from '#core/journal/fold.ts'
import type { World } from '../action.ts'
import { keepOwners } from './keep-owners.ts'
import type { OpenedLink } from './open-owner-link.ts'

/**
 * Keeps what an owner sent from the page of the choice. Said again another day, it stands beside what was said before.
 * Returns false when it could not be kept.
 */
export async function keepWishes(
  opened: OpenedLink,
  sent: { readonly id: string; readonly body: BodyOf<'owner-wishes'> },
  world: Pick<World, 'store'>,
): Promise<boolean> {
  return await keepOwners(opened, { ...sent, kind: 'owner-wishes', corrects: null }, world)
}
