import type { Agent } from './agent.ts'
import type { Edition } from './breakpoint.ts'
import type { Organism } from './organism.ts'
import type { ReadingRules } from './rules.ts'
import type { PreferenceTier, StewardshipTier } from './stewardship.ts'

/** Everything that reading a culture takes from content, handed to it as one thing. */
export type SusceptibilityFacts = {
  /** Every edition that is held, old ones too: an old case is read again by the edition it was judged by. */
  readonly editions: readonly Edition[]
  readonly organisms: readonly Organism[]
  readonly agents: readonly Agent[]
  readonly rules: ReadingRules
  /** Editions of human values that may stand beside a reading, flagged; the first before the second. */
  readonly people: readonly Edition['id'][]
  /** What dogs and cats are read by unless somebody chose otherwise. */
  readonly usual: Edition['id']
  readonly tiers: readonly StewardshipTier[]
  /** What a skin guideline prefers: an order, never an indication for a bulla. */
  readonly preferences: readonly PreferenceTier[]
}
