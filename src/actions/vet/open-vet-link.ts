import type { CaseFile } from '#core/journal/clinic.ts'
import { vetLinkState } from '#core/people/vet-link-state.ts'
import type { World } from '../action.ts'
import { linkedCase } from '../owner/linked-case.ts'
import { hashOf } from '../people/caller.ts'
import { isLinkToken } from '../people/link-token.ts'
import { countTry, delayOfAddress, networkOf } from '../people/tries.ts'
import type { VetLink } from './vet-links.ts'

export type OpenedVetLink = { readonly link: VetLink; readonly file: CaseFile; readonly now: string }

/**
 * The case behind the token of a link, or null for one that is wrong, has run out or was ended: nobody outside is told
 * which. Wrong ones are counted together with those of owners, and slowed down; a good one never. Every opening is
 * written down.
 */
export async function openVetLink(
  token: string,
  world: Pick<World, 'store' | 'accounts' | 'vetLinks' | 'clock' | 'door'>,
): Promise<OpenedVetLink | null> {
  const now = world.clock.now()
  const link = isLinkToken(token) ? await world.vetLinks.byToken(hashOf(token)) : undefined
  const file = link ? (await linkedCase(world, link.clinic, link.stream)).file : null
  if (!link || !file || vetLinkState(link, file, now) !== 'open') {
    await countTry(world, `owner-link address ${networkOf(world.door.address)}`, delayOfAddress)
    return null
  }
  await world.vetLinks.opened(link.id, now)
  const line = { stream: link.stream, person: link.contact, device: link.id, at: `${now.slice(0, 16)}Z` }
  await world.accounts.logRead(link.clinic, line)
  return { link, file, now }
}
