import { type Agent, agentById } from './agent.ts'
import type { Edition } from './breakpoint.ts'
import { intrinsicRule } from './intrinsic.ts'
import { type Isolate, type Line, lineOf } from './lines.ts'
import { nearness } from './meant.ts'
import type { Methicillin } from './methicillin.ts'
import type { Phenotype } from './reading.ts'
import type { Intrinsic, MultidrugList, MultidrugRules } from './rules.ts'

export type Multidrug = Pick<Phenotype, 'multidrug' | 'counted' | 'tested' | 'of'>
type CategoryState = {
  readonly id: string
  readonly state: 'not-susceptible' | 'susceptible' | 'untested'
  readonly whole: boolean
  readonly allResistant: boolean
}

/**
 * Multidrug resistance by the published categories: which were not susceptible, and how many were tested of how many. An
 * incomplete panel can show MDR, never exclude more: then XDR and PDR are only possible. A fallback counts for nothing.
 */
export function readMultidrug(
  isolate: Isolate,
  methicillin: Methicillin,
  convention: Edition['convention'],
  rules: MultidrugRules,
  intrinsic: readonly Intrinsic[],
  agents: readonly Agent[],
): Multidrug {
  const list = listOf(isolate, rules)
  if (!list) return { multidrug: 'not-known', counted: [], tested: 0, of: 0 }
  const states = list.categories.flatMap(
    (category) => stateOf(category, isolate, methicillin, convention, intrinsic, agents) ?? [],
  )
  const counted = states.filter(({ state }) => state === 'not-susceptible')
  const untested = states.filter(({ state }) => state === 'untested').length
  const susceptible = states.length - counted.length - untested
  const byDefinition =
    list.methicillinResistantIsMultidrug === true && (methicillin === 'yes' || methicillin === 'presumed')
  const answer = { counted: counted.map(({ id }) => id), tested: states.length - untested, of: states.length }
  if (answer.tested === 0 && !byDefinition) return { ...answer, multidrug: 'not-known' }
  if (counted.length < rules.least.value) return { ...answer, multidrug: byDefinition ? 'MDR' : 'no' }
  const tellsMore = answer.tested >= rules.possibleFrom.value * answer.of
  if (susceptible > rules.left || !tellsMore) return { ...answer, multidrug: 'MDR' }
  if (susceptible === 0 && states.every(({ allResistant, state }) => allResistant || state === 'untested')) {
    const complete = untested === 0 && states.every(({ whole }) => whole)
    return { ...answer, multidrug: complete ? 'PDR' : 'possible PDR' }
  }
  return { ...answer, multidrug: untested === 0 ? 'XDR' : 'possible XDR' }
}

function listOf({ organism }: Isolate, { lists }: MultidrugRules): MultidrugList | undefined {
  return lists
    .flatMap((list) => {
      const near = nearness(list, organism)
      return near === null ? [] : [{ list, near }]
    })
    .sort((one, other) => one.near - other.near)[0]?.list
}

/** Null for a category that the organism is always resistant to: it is taken out of the list. */
function stateOf(
  { id, agents: ids, byMethicillin }: MultidrugList['categories'][number],
  { organism, lines }: Isolate,
  methicillin: Methicillin,
  convention: Edition['convention'],
  intrinsic: readonly Intrinsic[],
  agents: readonly Agent[],
): CategoryState | null {
  const counting = ids.filter((one) => {
    const agent = agentById(agents, one)
    return agent !== undefined && intrinsicRule(organism, agent, intrinsic) === undefined
  })
  if (counting.length === 0) return null
  const judged = counting.map((one) => susceptibility(lineOf(lines, one), convention))
  const known = judged.filter((one) => one !== null)
  const whole = known.length === counting.length
  if (byMethicillin && (methicillin === 'yes' || methicillin === 'presumed')) {
    return { id, state: 'not-susceptible', whole: true, allResistant: true }
  }
  if (byMethicillin && methicillin === 'no' && known.length === 0) {
    return { id, state: 'susceptible', whole, allResistant: false }
  }
  if (known.length === 0) return { id, state: 'untested', whole, allResistant: false }
  const not = known.filter((one) => one === 'not-susceptible').length
  return { id, state: not > 0 ? 'not-susceptible' : 'susceptible', whole, allResistant: not === known.length }
}

/**
 * I counts by the rule of 2012; under EUCAST of today I is a susceptible category and only R counts. SDD never does.
 * What cannot be told from the number, or has no breakpoint, is untested.
 */
function susceptibility(
  line: Line | undefined,
  convention: Edition['convention'],
): 'not-susceptible' | 'susceptible' | null {
  if (!line) return null
  switch (line.read.category) {
    case 'S':
    case 'SDD':
      return 'susceptible'
    case 'I':
      return convention === 'EUCAST' ? 'susceptible' : 'not-susceptible'
    case 'R':
    case 'NS':
      return 'not-susceptible'
    case 'NI':
    case 'no_breakpoint':
      return null
  }
}
