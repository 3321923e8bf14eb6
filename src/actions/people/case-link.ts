import { z } from 'zod'

/** One private link to a page about one case, for one contact. Its token is with whoever holds it; here is only its hash. */
export type CaseLink = {
  readonly id: string
  readonly clinic: string
  readonly stream: string
  readonly contact: string
  readonly madeAt: string
  readonly madeBy: string
  readonly expiresAt: string
  readonly lastOpenedAt: string | null
  readonly revokedAt: string | null
  /** A person, or `restore`: a backup that is put back revives no link. */
  readonly revokedBy: string | null
}

/** A link as it is made: nobody opened or ended it yet. */
export type NewLink<Link extends CaseLink> = Omit<Link, 'lastOpenedAt' | 'revokedAt' | 'revokedBy'>

/** Who ended a link when no person did. */
export const endedByRestore = 'restore'

/**
 * The private links of one kind; a line is never taken away, so that who made and who ended one stays. Both stores pass
 * one contract test. Every write is on disk when it returns.
 */
export interface CaseLinks<Link extends CaseLink> {
  keep(link: NewLink<Link>, tokenHash: string): Promise<void>
  /** The link with this token, whatever its state. */
  byToken(tokenHash: string): Promise<Link | undefined>
  /** Every link that was ever made for some cases, the oldest first. */
  ofCases(clinic: string, streams: readonly string[]): Promise<Link[]>
  opened(id: string, at: string): Promise<void>
  /** Ends a link for good; who ended it first stays. False when there is none of this clinic. */
  revoke(clinic: string, id: string, by: string, at: string): Promise<boolean>
}

/** The case that a link is made or listed for. */
export const caseStreamSchema = z.string().regex(/^case:.{1,195}$/u, 'must be the stream of a case like case:tansy')

/** What the list of a case says of every link, of whichever kind; never its address. */
export const listedLink = z.object({
  id: z.string(),
  contact: z.string(),
  madeAt: z.string(),
  madeBy: z.string(),
  expiresAt: z.string(),
  lastOpenedAt: z.string().nullable(),
  revokedAt: z.string().nullable(),
  revokedBy: z.string().nullable(),
})
export type ListedLink = z.infer<typeof listedLink>
