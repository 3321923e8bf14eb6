import type { Sourced } from '#core/evidence/sourced.ts'
import type { Agent, AgentFamily } from './agent.ts'

/** A avoid, B restrict, C caution, D prudence: the four of the European Medicines Agency. */
export type StewardshipCategory = 'A' | 'B' | 'C' | 'D'
/** How a guideline of one disease ranks drugs; `discouraged` is not a rank but a warning. */
export type PreferenceRank = 'first' | 'second' | 'reserved' | 'discouraged'

/** Families and single drugs of one category, as far as one source says so. */
export type StewardshipTier = Sourced<{
  readonly category: StewardshipCategory
  readonly families: readonly AgentFamily[]
  readonly agents: readonly string[]
}>

/** Drugs that a guideline for another disease ranks alike. */
export type PreferenceTier = Sourced<{
  readonly rank: PreferenceRank
  readonly families: readonly AgentFamily[]
  readonly agents: readonly string[]
}>

/**
 * The tier that a drug stands in: one that names the drug itself goes before one that names its family. Undefined for
 * a drug that no source here ranks.
 *
 * @example tierOf(enrofloxacin, tiers)?.value.category // 'B'
 */
export function tierOf<Tier extends StewardshipTier | PreferenceTier>(
  agent: Agent,
  tiers: readonly Tier[],
): Tier | undefined {
  return (
    tiers.find(({ value }) => value.agents.includes(agent.id)) ??
    tiers.find(({ value }) => value.families.includes(agent.family))
  )
}
