/** `private` goes to the household, `in-room` is for a tablet of the house while the owner sits there. */
export const ownerLinkUses = ['private', 'in-room'] as const
export type OwnerLinkUse = (typeof ownerLinkUses)[number]

/** One link to the owner's page of one case, for one contact. Its token is with whoever holds it; here is only its hash. */
export type OwnerLink = {
  readonly id: string
  readonly clinic: string
  readonly stream: string
  readonly contact: string
  readonly use: OwnerLinkUse
  readonly madeAt: string
  readonly madeBy: string
  readonly expiresAt: string
  readonly lastOpenedAt: string | null
  readonly revokedAt: string | null
  /** A person, or `restore`: a backup that is put back revives no link. */
  readonly revokedBy: string | null
}

/** Who ended a link when no person did. */
export const endedByRestore = 'restore'

/**
 * The private links of the clinic; a line is never taken away, so that who made and who ended one stays. Both stores pass
 * one contract test. Every write is on disk when it returns.
 */
export interface OwnerLinks {
  keep(link: Omit<OwnerLink, 'lastOpenedAt' | 'revokedAt' | 'revokedBy'>, tokenHash: string): Promise<void>
  /** The link with this token, whatever its state. */
  byToken(tokenHash: string): Promise<OwnerLink | undefined>
  /** Every link that was ever made for some cases, the oldest first. */
  ofCases(clinic: string, streams: readonly string[]): Promise<OwnerLink[]>
  /** The links of a clinic that nobody ended: one whose day has passed stands longer when the animal went home. */
  standing(clinic: string): Promise<OwnerLink[]>
  opened(id: string, at: string): Promise<void>
  /** Ends a link for good; who ended it first stays. False when there is none of this clinic. */
  revoke(clinic: string, id: string, by: string, at: string): Promise<boolean>
}
