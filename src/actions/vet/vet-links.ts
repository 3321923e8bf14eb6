import type { Side } from '#core/animal/species.ts'
import type { VetAsk } from '#core/vet/asked-of-vet.ts'
import type { CaseLink, CaseLinks } from '../people/case-link.ts'

/** A link to the short form of a referring practice. */
export type VetLink = CaseLink & {
  readonly asked: VetAsk
  /** The ear it is about; null: every operated one. */
  readonly side: Side | null
  /** The window of the look it asks for; null for a stretch of time. */
  readonly dueFrom: string | null
  readonly dueBy: string | null
}

/** The private links for referring practices. */
export interface VetLinks extends CaseLinks<VetLink> {
  /** The links that are neither ended nor run out. */
  standing(clinic: string, now: string): Promise<VetLink[]>
}
