import type { CaseFile } from '#core/journal/clinic.ts'
import type { World } from '../action.ts'
import { hashOf } from './caller.ts'
import type { CaseLink, CaseLinks } from './case-link.ts'
import { isLinkToken } from './link-token.ts'
import { linkedCase } from './linked-case.ts'
import { countTry, delayOfAddress, networkOf } from './tries.ts'

/** A link that opened, and the case behind it at that moment. */
export type OpenedCaseLink<Link extends CaseLink> = {
  readonly link: Link
  readonly file: CaseFile
  readonly now: string
}

/**
 * The case behind the token of a link, or null for one that is wrong or that `opens` says no to: nobody outside is told
 * which. A good link is never slowed down, whoever tries others from the same address; a wrong one counts, those of every
 * kind together, and throws the refusal of too many tries. Every opening is written down.
 */
export async function openCaseLink<Link extends CaseLink>(
  token: string,
  links: Pick<CaseLinks<Link>, 'byToken' | 'opened'>,
  opens: (link: Link, file: CaseFile, now: string) => boolean,
  world: Pick<World, 'store' | 'accounts' | 'clock' | 'door'>,
): Promise<OpenedCaseLink<Link> | null> {
  const now = world.clock.now()
  const link = isLinkToken(token) ? await links.byToken(hashOf(token)) : undefined
  const file = link ? (await linkedCase(world, link.clinic, link.stream)).file : null
  if (!link || !file || !opens(link, file, now)) {
    await countTry(world, `owner-link address ${networkOf(world.door.address)}`, delayOfAddress)
    return null
  }
  await links.opened(link.id, now)
  const line = { stream: link.stream, person: link.contact, device: link.id, at: `${now.slice(0, 16)}Z` }
  await world.accounts.logRead(link.clinic, line)
  return { link, file, now }
}
