import type { OwnerWords } from '#content/languages/owner-words.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { fill } from '#core/outcome/finding.ts'
import { sourceLines } from '../case/sources-list.ts'

/** Gives the facts of a row their numbers, in the order in which sources are first named. */
export type Numbered = (facts: readonly Provenance[]) => string

/** Numbers sources as the leaflet names them, and lists them in the end. */
export function numberSources(words: Pick<OwnerWords, 'leaflet' | 'papers' | 'unpublished'>): {
  readonly numbered: Numbered
  readonly listed: () => string[]
} {
  const named: { readonly id: string; readonly facts: Provenance[] }[] = []
  const numberOf = (id: string, fact: Provenance): number => {
    const at = named.findIndex((one) => one.id === id)
    const only = { ...fact, sources: [id] }
    if (at < 0) return named.push({ id, facts: [only] })
    named[at]?.facts.push(only)
    return at + 1
  }
  return {
    numbered: (facts) => {
      const numbers = facts.flatMap((fact) => fact.sources.map((id) => numberOf(id, fact)))
      return [...new Set(numbers)].sort((a, b) => a - b).join(', ')
    },
    listed: () =>
      named.map(({ facts }, at) =>
        fill(words.leaflet.sourceLine, { number: String(at + 1), text: sourceLines(facts, words).join('; ') }),
      ),
  }
}
