import type { CaseFile } from '../journal/clinic.ts'

/** Why a link for the referring practice does not open any more; `open` while it does. */
export const vetLinkStates = ['open', 'ended', 'run-out', 'animal-died', 'vet-gone', 'erased'] as const
export type VetLinkState = (typeof vetLinkStates)[number]

export type VetLinkDates = {
  readonly contact: string
  readonly expiresAt: string
  readonly revokedAt: string | null
}

/**
 * Whether a link to the short form opens now. Death ends it, so does an erasure of the animal or of the contact, and a
 * practice that is no longer the animal's must not be shown anything.
 *
 * @example vetLinkState(link, file, '2026-03-01T08:00:00.000Z') // 'open'
 */
export function vetLinkState(link: VetLinkDates, file: CaseFile | null, now: string): VetLinkState {
  if (link.revokedAt !== null) return 'ended'
  if (now >= link.expiresAt) return 'run-out'
  if (!file?.theCase.latest('identity')) return 'erased'
  if (file.theCase.latest('death')) return 'animal-died'
  return vetsOf(file).includes(link.contact) ? 'open' : 'vet-gone'
}

/**
 * The practices that look after this animal and that the register knows as vets: for them a link can be made.
 *
 * @example vetsOf(file) // ['contact-2']
 */
export function vetsOf({ theCase, contacts }: Pick<CaseFile, 'theCase' | 'contacts'>): string[] {
  const named = theCase.live('household').flatMap(({ body }) => body.contacts.map(({ contact }) => contact))
  const own = theCase.latest('identity')?.body.referringVet ?? null
  return [...new Set([...(own === null ? [] : [own]), ...named])].filter(
    (contact) => contacts.get(contact)?.kind === 'vet',
  )
}
