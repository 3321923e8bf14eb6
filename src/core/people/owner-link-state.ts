import type { CaseFile } from '../journal/clinic.ts'

/** Why a link does not open any more; `open` while it does. */
export const ownerLinkStates = ['open', 'ended', 'run-out', 'animal-died', 'person-gone', 'erased'] as const
export type OwnerLinkState = (typeof ownerLinkStates)[number]

export type OwnerLinkDates = {
  readonly contact: string
  readonly expiresAt: string
  readonly revokedAt: string | null
}

/**
 * Whether a link to the owner's page opens now. Death ends it, so does an erasure of the animal or of the person, and a
 * person who is no longer among the people of the animal must not read on.
 *
 * @example ownerLinkState(link, file, '2026-03-01T08:00:00.000Z') // 'open'
 */
export function ownerLinkState(link: OwnerLinkDates, file: CaseFile | null, now: string): OwnerLinkState {
  if (link.revokedAt !== null) return 'ended'
  if (now >= link.expiresAt) return 'run-out'
  if (!file?.theCase.latest('identity')) return 'erased'
  if (file.theCase.latest('death')) return 'animal-died'
  return ownersOf(file).includes(link.contact) ? 'open' : 'person-gone'
}

/** The people of the household whom the register knows as owners: for them a link can be made. */
export function ownersOf({ theCase, contacts }: Pick<CaseFile, 'theCase' | 'contacts'>): string[] {
  const named = theCase.live('household').flatMap(({ body }) => body.contacts.map(({ contact }) => contact))
  return [...new Set(named)].filter((contact) => contacts.get(contact)?.kind === 'owner')
}
