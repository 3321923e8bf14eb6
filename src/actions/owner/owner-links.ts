import type { CaseLink, CaseLinks } from '../people/case-link.ts'

/** `private` goes to the household, `in-room` is for a tablet of the house while the owner sits there. */
export const ownerLinkUses = ['private', 'in-room'] as const
export type OwnerLinkUse = (typeof ownerLinkUses)[number]

/** A link to the owner's page. */
export type OwnerLink = CaseLink & { readonly use: OwnerLinkUse }

/** The private links for owners. */
export interface OwnerLinks extends CaseLinks<OwnerLink> {
  /** The links of a clinic that nobody ended: one whose day has passed stands longer when the animal went home. */
  standing(clinic: string): Promise<OwnerLink[]>
}
