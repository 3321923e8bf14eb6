import { ownerLinkRules } from '#content/follow-up/owner-link-rules.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { ownerLinkEnds, ownerLinkState } from '#core/people/owner-link-state.ts'
import type { World } from '../action.ts'
import { type OpenedCaseLink, openCaseLink } from '../people/open-case-link.ts'
import type { OwnerLink } from './owner-links.ts'

/** Its link’s `expiresAt` is when it really ends: the year at home counted in. */
export type OpenedLink = OpenedCaseLink<OwnerLink> & {
  /** The animal has died: nothing is shown or asked any more. */
  readonly died: boolean
}
type Asked = Pick<World, 'store' | 'accounts' | 'ownerLinks' | 'clock' | 'door'>

const afterHome = ownerLinkRules.privateLastsAfterHome.value

/** The case behind the token of a link of an owner; null for one that is wrong, has run out or was ended. */
export async function openOwnerLink(token: string, world: Asked): Promise<OpenedLink | null> {
  const opens = (link: OwnerLink, file: CaseFile, now: string) =>
    ['open', 'animal-died'].includes(ownerLinkState(link, file, now, afterHome))
  const opened = await openCaseLink(token, world.ownerLinks, opens, world)
  if (!opened) return null
  const { link, file, now } = opened
  const expiresAt = ownerLinkEnds(link, file, afterHome)
  return { link: { ...link, expiresAt }, file, now, died: file.theCase.latest('death') !== undefined }
}
