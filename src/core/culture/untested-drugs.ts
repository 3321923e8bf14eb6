import type { Species } from '#core/animal/species.ts'
import { type Drug, drugById } from '#core/formulary/drug.ts'
import { type Agent, betaLactams } from './agent.ts'
import type { SusceptibilityFacts } from './facts.ts'
import { intrinsicRule } from './intrinsic.ts'
import type { CultureOption } from './option.ts'
import { organismById } from './organism.ts'
import type { IsolateReading } from './reading.ts'
import { tierOf } from './stewardship.ts'

/**
 * Drugs with a course for this species that the report does not name: what a laboratory could still test. Left out are
 * every beta-lactam against a methicillin-resistant isolate, what an organism is always resistant to, and what is kept
 * back as category A.
 *
 * @example untestedDrugs(options, isolates, 'cat', facts, formulary) // ['doxycycline', 'pradofloxacin']
 */
export function untestedDrugs(
  options: readonly CultureOption[],
  isolates: readonly IsolateReading[],
  species: Species,
  { agents, organisms, rules, tiers }: Pick<SusceptibilityFacts, 'agents' | 'organisms' | 'rules' | 'tiers'>,
  drugs: readonly Drug[],
): string[] {
  const named = new Set(options.map(({ agent }) => agent))
  const grown = isolates.flatMap(({ organism }) => organismById(organisms, organism) ?? [])
  const isAlwaysResistant = (agent: Agent) =>
    grown.some((organism) => intrinsicRule(organism, agent, rules.intrinsic) !== undefined)
  const isResistant = isolates.some(({ phenotype }) => ['yes', 'presumed'].includes(phenotype.methicillinResistant))
  return agents
    .filter((agent) => !named.has(agent.id) && !isAlwaysResistant(agent))
    .filter((agent) => !(isResistant && betaLactams.includes(agent.family)))
    .filter((agent) => tierOf(agent, tiers)?.value.category !== 'A')
    .filter(({ formulary }) =>
      drugById(drugs, formulary ?? '')?.doses.some((row) => row.species === species && row.use === 'antibiotic_course'),
    )
    .map(({ name }) => name)
}
