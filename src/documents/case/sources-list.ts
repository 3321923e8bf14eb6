import type { OwnerWords } from '#content/languages/owner-words.ts'
import { sources } from '#content/sources/index.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { cite } from '#core/evidence/cite.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { fill } from '#core/outcome/finding.ts'
import { spellUnits } from '#core/units/unit-words.ts'

const english = { papers: papersInEnglish, unpublished: {} }

/** Each publication once and how well we know it, with every place in it that was used. */
export function sourceLines(
  facts: readonly Provenance[],
  { papers: words, unpublished }: Pick<OwnerWords, 'papers' | 'unpublished'> = english,
): string[] {
  const places = new Map<string, { citation: string; known: string; where: Set<string> }>()
  for (const { id, citation, where, known } of cite(facts, sources)) {
    const key = `${id} ${known}`
    const place = places.get(key) ?? {
      citation: unpublished[id] ?? citation,
      known: words.known[known],
      where: new Set(),
    }
    if (where !== null) place.where.add(spellUnits(where))
    places.set(key, place)
  }
  return [...places.values()].map(({ citation, known, where }) =>
    where.size === 0
      ? fill(words.source, { citation, known })
      : fill(words.sourceAt, { citation, known, where: [...where].join('; ') }),
  )
}
