import type { Confidence, Known, Provenance, Source, SourceId, Strength } from './sourced.ts'

/** A source as it is printed beside a number: who says so, where to check, and how well we know it. */
export type Cited = {
  readonly id: SourceId
  readonly citation: string
  /** Page or table of this fact, else where the text was seen; null when neither is recorded. */
  readonly where: string | null
  readonly known: Known
  readonly confidence: Confidence
  readonly strength: Strength
}

/**
 * The sources of some facts, each named once, in the order they first stand. An unknown id is a bug of content.
 *
 * @example cite([fact], sources) // [{ id: 'merck-cpr-table', citation: 'Merck …', known: 'read', … }]
 */
export function cite(facts: readonly Provenance[], library: readonly Source[]): Cited[] {
  const byId = new Map(library.map((source) => [source.id, source]))
  const cited = new Map<string, Cited>()
  for (const fact of facts) {
    for (const id of fact.sources) {
      const source = byId.get(id)
      if (!source) throw new Error(`There is no source "${id}".`)
      const { known, confidence, strength } = fact
      const where = fact.where ?? source.seenAt ?? null
      const key = JSON.stringify([id, where, known, confidence, strength])
      if (!cited.has(key)) cited.set(key, { id, citation: source.citation, where, known, confidence, strength })
    }
  }
  return [...cited.values()]
}
