import type { Agent } from './agent.ts'
import type { Organism } from './organism.ts'
import type { AgentsMeant, OrganismsMeant } from './rules.ts'

/** Whether a rule speaks of this drug. */
export function meansAgent({ agents = [], families = [], except = [] }: AgentsMeant, agent: Agent): boolean {
  return !except.includes(agent.id) && (agents.includes(agent.id) || families.includes(agent.family))
}

/** Whether a rule speaks of this organism, or of a group of it. */
export function meansOrganism(of: OrganismsMeant, organism: Organism): boolean {
  return nearness(of, organism) !== null
}

/** How near a rule comes to an organism: 0 where it names it, then by its groups; null where it does not speak of it. */
export function nearness({ organisms, except = [] }: OrganismsMeant, organism: Organism): number | null {
  const order = [organism.id, ...organism.groups]
  if (order.some((name) => except.includes(name))) return null
  const at = order.findIndex((name) => organisms.includes(name))
  return at === -1 ? null : at
}
