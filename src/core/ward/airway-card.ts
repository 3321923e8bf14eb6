import type { Sourced } from '#core/evidence/sourced.ts'
import type { WatchedReason } from './watched.ts'

/** The card of bandage and airway, as content writes it: every line with who says so. */
export type AirwayCard = {
  readonly who: Sourced<string>
  readonly looks: readonly Sourced<string>[]
  /** What is done first when something is wrong, in this order. */
  readonly first: readonly Sourced<string>[]
  readonly night: Sourced<string>
  readonly deaths: Sourced<string>
  /** Why some are watched more closely. */
  readonly watched: Readonly<Record<WatchedReason, Sourced<string>>>
}
