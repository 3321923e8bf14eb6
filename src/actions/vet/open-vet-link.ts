import { vetLinkState } from '#core/people/vet-link-state.ts'
import type { World } from '../action.ts'
import { type OpenedCaseLink, openCaseLink } from '../people/open-case-link.ts'
import type { VetLink } from './vet-links.ts'

export type OpenedVetLink = OpenedCaseLink<VetLink>
type Asked = Pick<World, 'store' | 'accounts' | 'vetLinks' | 'clock' | 'door'>

/** The case behind the token of a link of a practice; null for one that is wrong, has run out, was ended, or whose animal died. */
export function openVetLink(token: string, world: Asked): Promise<OpenedVetLink | null> {
  return openCaseLink(token, world.vetLinks, (...asked) => vetLinkState(...asked) === 'open', world)
}
