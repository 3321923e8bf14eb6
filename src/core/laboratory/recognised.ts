import type { SusceptibilityFacts } from '#core/culture/facts.ts'
import { type Recognised, recogniseAgent, recogniseOrganism } from '#core/culture/recognise.ts'

type Known = Pick<SusceptibilityFacts, 'agents' | 'organisms'>

/**
 * What a printed drug is, by its name and its code. Where they name two drugs it is neither.
 *
 * @example agentPrinted('Clindamycin [Susceptibility]', '18908-4', facts).id // 'clindamycin'
 */
export function agentPrinted(printed: string, code: string | null, { agents }: Known): Recognised {
  const byName = recogniseAgent(printed.replace(/\s*\[.*$/, ''), agents)
  const byCode = agents.filter(({ loinc }) => code !== null && loinc?.value.includes(code)).map(({ id }) => id)
  return joined(byName, byCode)
}

export function organismPrinted(printed: string, code: string | null, { organisms }: Known): Recognised {
  const byCode = organisms.filter(({ snomed }) => code !== null && snomed?.value.includes(code)).map(({ id }) => id)
  return joined(recogniseOrganism(printed, organisms), byCode)
}

function joined(byName: Recognised, byCode: readonly string[]): Recognised {
  const [code, ...others] = byCode
  if (code === undefined) return byName
  if (byName.id === code && others.length === 0) return byName
  const near = [...new Set([...(byName.id === null ? [] : [byName.id]), ...byCode, ...byName.near])]
  // A code beside a name that says nothing is enough; a name that says something else is not overruled.
  if (byName.id === null && byName.near.length === 0 && others.length === 0) return { id: code, near: [] }
  return others.includes(byName.id ?? '') ? { id: byName.id, near: [] } : { id: null, near }
}
