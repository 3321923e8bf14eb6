import { plainName } from '#core/identity/names.ts'
import type { Agent } from './agent.ts'
import { nearest } from './near-names.ts'
import type { Organism } from './organism.ts'

/** What a printed name stands for; or null, with the names it may have meant. A person chooses, never this. */
export type Recognised = { readonly id: string | null; readonly near: readonly string[] }
type Named = { readonly id: string; readonly name: string; readonly aliases: readonly string[] }

/**
 * The drug that a laboratory means. Spelling, order, capitals and accents do not matter, nor the load of a disk and
 * the word "disk"; letters do.
 *
 * @example recogniseAgent('Cephalexin 30 µg', agents) // { id: 'cefalexin', near: [] }
 * @example recogniseAgent('enrofloxacn', agents) // { id: null, near: ['enrofloxacin', …] }
 */
export function recogniseAgent(text: string, agents: readonly Agent[]): Recognised {
  return recognise(text, agents, (word) => measures.test(word) || tellsOfTest.has(word))
}

/**
 * The organism that a laboratory means. What it says of the strain ("haemolytic", "MRSP", "ESBL") names no species, and
 * is left out only when the name is not known with it.
 *
 * @example recogniseOrganism('E. coli (haemolytic)', organisms) // { id: 'escherichia-coli', near: [] }
 */
export function recogniseOrganism(text: string, organisms: readonly Organism[]): Recognised {
  return recognise(text, organisms, (word) => tellsOfStrain.has(word))
}

const measures = /^(\d+|\d*(ug|mcg|mg|iu|u|units?|ml|l))$/
const tellsOfTest = new Set(['mic', 'disk', 'disc', 'kb', 'etest', 'microg'])
/** Never "non" and "negative": without them a name would say its contrary. */
const tellsOfStrain = new Set(
  ['haemolytic', 'beta', 'mucoid', 'methicillin', 'meticillin', 'resistant', 'susceptible', 'sensitive', 'presumptive']
    .concat(['mr', 'mrsp', 'mrsa', 'mssp', 'mssa', 'esbl', 'meca', 'producing', 'producer', 'positive'])
    .map(spelled),
)

function recognise(text: string, list: readonly Named[], says: (word: string) => boolean): Recognised {
  const printed = words(text)
  const known = namesOf(list)
  const without = printed.filter((word) => !says(word))
  for (const tried of [printed, without]) {
    const [only, ...more] = known.get(key(tried)) ?? []
    if (only !== undefined && more.length === 0) return { id: only, near: [] }
    if (only !== undefined) return { id: null, near: [only, ...more] }
  }
  return { id: null, near: nearest(key(without.length > 0 ? without : printed), known) }
}

/** One spelling for what is written in two ways: ph and f, ae and e, oe and e, Greek letters and their names. */
function spelled(text: string): string {
  const latin = text.replaceAll(/[µμ]/g, 'u').replaceAll('β', 'beta ').replaceAll('α', 'alpha ')
  return plainName(latin).replaceAll('ph', 'f').replaceAll(/[ao]e/g, 'e')
}

const joining = new Set(['and', 'with', 'plus', 'y', 'et', 'und'])
function words(text: string): string[] {
  return spelled(text)
    .split(' ')
    .filter((word) => word !== '' && !joining.has(word))
}

function key(printed: readonly string[]): string {
  return [...printed].sort().join(' ')
}

/** Worked out once for each list: a file of results asks for the same names again and again. */
const kept = new WeakMap<readonly Named[], Map<string, string[]>>()
function namesOf(list: readonly Named[]): Map<string, string[]> {
  const before = kept.get(list)
  if (before) return before
  const names = new Map<string, string[]>()
  for (const { id, name, aliases } of list) {
    for (const one of new Set([id, name, ...aliases].map((text) => key(words(text))))) {
      names.set(one, [...(names.get(one) ?? []), id])
    }
  }
  kept.set(list, names)
  return names
}
