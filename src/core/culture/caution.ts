import type { Species } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { AgentFamily } from './agent.ts'

/** Which drugs a fact speaks of: whole families, single drugs, or both. */
export type AboutAgents = { readonly families?: readonly AgentFamily[]; readonly agents?: readonly string[] }

/** What a drug may do to an animal, or how far it reaches, beyond what its row of the formulary says. */
export type CultureCaution = Sourced<string> & AboutAgents & { readonly species?: Species }

/** What was seen of a drug that reached a middle ear from outside. */
export type InOpenEar = Sourced<'no-harm-seen' | 'harm-seen' | 'said-to-be-safe' | 'said-to-harm'> & AboutAgents

/** How long somebody gave it for, for what. */
export type PublishedDuration = Sourced<string> & {
  readonly about: 'clean-bulla' | 'bone-or-revision' | 'without-operation' | 'any'
  readonly species?: Species
}

/**
 * Whether a fact speaks of a drug.
 *
 * @example speaksOf({ families: ['fluoroquinolone'] }, { id: 'enrofloxacin', family: 'fluoroquinolone' }) // true
 */
export function speaksOf(
  { families, agents }: AboutAgents,
  agent: { readonly id: string; readonly family: AgentFamily },
): boolean {
  return agents?.includes(agent.id) === true || families?.includes(agent.family) === true
}

/** What holds for drops, whatever a report says of their drug. */
export type TopicalRules = Readonly<Record<'systemicOnly' | 'cytologyFirst' | 'closedBulla', Sourced<string>>>
