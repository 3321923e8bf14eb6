import type { Side } from '#core/animal/species.ts'
import type { VetAsk } from '#core/vet/asked-of-vet.ts'

/** One link to the short form of one case, for one practice. Its token is with whoever holds it; here is only its hash. */
export type VetLink = {
  readonly id: string
  readonly clinic: string
  readonly stream: string
  readonly contact: string
  readonly asked: VetAsk
  /** The ear it is about; null: every operated one. */
  readonly side: Side | null
  /** The window of the look it asks for; null for a stretch of time. */
  readonly dueFrom: string | null
  readonly dueBy: string | null
  readonly madeAt: string
  readonly madeBy: string
  readonly expiresAt: string
  readonly lastOpenedAt: string | null
  readonly revokedAt: string | null
  /** A person, or `restore`: a backup that is put back revives no link. */
  readonly revokedBy: string | null
}

/**
 * The links of the clinic for referring practices; a line is never taken away, so that who made and who ended one stays.
 * Both stores pass one contract test. Every write is on disk when it returns.
 */
export interface VetLinks {
  keep(link: Omit<VetLink, 'lastOpenedAt' | 'revokedAt' | 'revokedBy'>, tokenHash: string): Promise<void>
  /** The link with this token, whatever its state. */
  byToken(tokenHash: string): Promise<VetLink | undefined>
  /** Every link that was ever made for some cases, the oldest first. */
  ofCases(clinic: string, streams: readonly string[]): Promise<VetLink[]>
  /** The links that are neither ended nor run out. */
  standing(clinic: string, now: string): Promise<VetLink[]>
  opened(id: string, at: string): Promise<void>
  /** False when there is no such link; one that was ended before stays as it was ended. */
  revoke(clinic: string, id: string, by: string, at: string): Promise<boolean>
}
