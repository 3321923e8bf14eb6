import { ownerLinkRules } from '#content/follow-up/owner-link-rules.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { ownerLinkEnds, ownerLinkState } from '#core/people/owner-link-state.ts'
import type { World } from '../action.ts'
import { hashOf } from '../people/caller.ts'
import { isLinkToken } from '../people/link-token.ts'
import { countTry, delayOfAddress, networkOf } from '../people/tries.ts'
import { linkedCase } from './linked-case.ts'
import type { OwnerLink } from './owner-links.ts'

export type OpenedLink = {
  /** `expiresAt` is when it really ends: the year at home counted in. */
  readonly link: OwnerLink
  readonly file: CaseFile
  readonly now: string
  /** The animal has died: nothing is shown or asked any more. */
  readonly died: boolean
}
type Asked = Pick<World, 'store' | 'accounts' | 'ownerLinks' | 'clock' | 'door'>

const afterHome = ownerLinkRules.privateLastsAfterHome.value

/**
 * The case behind the token of a link, or null for one that is wrong, has run out or was ended: nobody outside is told
 * which. A good link is never slowed down, whoever tries others from the same address; a wrong one counts, and throws
 * the refusal of too many tries. Every opening is written down.
 */
export async function openOwnerLink(token: string, world: Asked): Promise<OpenedLink | null> {
  const now = world.clock.now()
  const link = isLinkToken(token) ? await world.ownerLinks.byToken(hashOf(token)) : undefined
  const file = link ? (await linkedCase(world, link.clinic, link.stream)).file : null
  const state = link && ownerLinkState(link, file, now, afterHome)
  if (!link || !file || (state !== 'open' && state !== 'animal-died')) {
    await countTry(world, `owner-link address ${networkOf(world.door.address)}`, delayOfAddress)
    return null
  }
  await world.ownerLinks.opened(link.id, now)
  const line = { stream: link.stream, person: link.contact, device: link.id, at: `${now.slice(0, 16)}Z` }
  await world.accounts.logRead(link.clinic, line)
  const expiresAt = ownerLinkEnds(link, file, afterHome)
  return { link: { ...link, expiresAt }, file, now, died: state === 'animal-died' }
}
