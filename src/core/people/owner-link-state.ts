import { homePlanOf } from '../home/home-plan.ts'
import type { CaseFile } from '../journal/clinic.ts'
import { instantAfter, type Period } from '../time/calendar-day.ts'

/** Why a link does not open any more; `open` while it does. */
export const ownerLinkStates = ['open', 'ended', 'run-out', 'animal-died', 'person-gone', 'erased'] as const
export type OwnerLinkState = (typeof ownerLinkStates)[number]

export type OwnerLinkDates = {
  readonly contact: string
  /** `private` goes to the household, `in-room` stays in the house. */
  readonly use: 'private' | 'in-room'
  readonly expiresAt: string
  readonly revokedAt: string | null
}

/**
 * Until when a link opens. One of a household that still stood on the day the animal went home stands through the year
 * that follows: `afterHome` counts from then. One that had run out before is not woken by it.
 *
 * @example ownerLinkEnds(link, file, { count: 14, unit: 'months' }) // '2027-04-14T00:00:00.000Z'
 */
export function ownerLinkEnds(link: OwnerLinkDates, file: CaseFile | null, afterHome: Period): string {
  const wentHome = file && homePlanOf(file.theCase)?.discharge.at
  if (!file || !wentHome || link.use !== 'private' || link.expiresAt < wentHome) return link.expiresAt
  const end = instantAfter({ at: wentHome, zone: file.clinic.zone }, afterHome)
  return [link.expiresAt, end].sort().at(-1) ?? end
}

/**
 * Whether a link to the owner's page opens now. Death ends it, so does an erasure of the animal or of the person, and a
 * person who is no longer among the people of the animal must not read on.
 *
 * @example ownerLinkState(link, file, '2026-03-01T08:00:00.000Z', afterHome) // 'open'
 */
export function ownerLinkState(
  link: OwnerLinkDates,
  file: CaseFile | null,
  now: string,
  afterHome: Period,
): OwnerLinkState {
  if (link.revokedAt !== null) return 'ended'
  if (now >= ownerLinkEnds(link, file, afterHome)) return 'run-out'
  if (!file?.theCase.latest('identity')) return 'erased'
  if (!ownersOf(file).includes(link.contact)) return 'person-gone'
  return file.theCase.latest('death') ? 'animal-died' : 'open'
}

/** The people of the household whom the register knows as owners: for them a link can be made. */
export function ownersOf({ theCase, contacts }: Pick<CaseFile, 'theCase' | 'contacts'>): string[] {
  const named = theCase.live('household').flatMap(({ body }) => body.contacts.map(({ contact }) => contact))
  return [...new Set(named)].filter((contact) => contacts.get(contact)?.kind === 'owner')
}
