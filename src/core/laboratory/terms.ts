import type { Side, Species } from '#core/animal/species.ts'
import type { ColumnMeaning } from './mapping.ts'
import type { ReportedTest } from './report.ts'

/** The words and codes by which laboratories say things; written down in content, in small letters. */
export type LaboratoryTerms = {
  readonly notTested: readonly string[]
  readonly positive: readonly string[]
  readonly negative: readonly string[]
  readonly milligramsPerLitre: readonly string[]
  readonly millimetres: readonly string[]
  readonly noGrowth: readonly string[]
  readonly noGrowthCodes: readonly string[]
  readonly sides: Readonly<Record<string, Side | 'BOTH'>>
  readonly species: Readonly<Record<string, Species>>
  readonly statuses: Readonly<Record<string, 'preliminary' | 'final' | 'corrected'>>
  readonly tests: Readonly<Record<string, ReportedTest['test']>>
  readonly columns: Readonly<Record<string, ColumnMeaning>>
  /** Codes of an observation whose value is an organism, an amount of growth, or one drug's susceptibility. */
  readonly organismCodes: readonly string[]
  readonly amountCodes: readonly string[]
  readonly drugCodes: readonly string[]
  /** Words that name such an observation where a laboratory has codes of its own. */
  readonly organismWords: readonly string[]
  readonly amountWords: readonly string[]
  /** What a column of a wide table is called beside its drug. */
  readonly zoneWords: readonly string[]
  readonly micWords: readonly string[]
  readonly categoryWords: readonly string[]
}

/** What a list of words says of one; a word from outside never reaches what every object has. */
export function termOf<Meaning>(list: Readonly<Record<string, Meaning>>, word: string): Meaning | null {
  return Object.hasOwn(list, word) ? (list[word] ?? null) : null
}

/** LEFT, RIGHT or both, from words such as "left ear"; null when it names none. Letters alone count only as a code. */
export function sideIn(text: string, terms: LaboratoryTerms): Side | 'BOTH' | null {
  const words = text.toLowerCase().split(/[^\p{L}\p{N}]+/u)
  const found = new Set(words.filter((word) => word.length > 2).map((word) => termOf(terms.sides, word)))
  found.delete(null)
  if (found.size === 0) return null
  return found.size === 1 ? ([...found][0] ?? null) : 'BOTH'
}

/** A side that stands in a field of its own, where one letter or a code is enough. */
export function sideCoded(text: string, terms: LaboratoryTerms): Side | 'BOTH' | null {
  return termOf(terms.sides, text.trim().toLowerCase()) ?? sideIn(text, terms)
}

/** "No growth", "No growth after 48 hours"; a sentence that goes on to name something is not that. */
export function saysNoGrowth(text: string, terms: LaboratoryTerms): boolean {
  const plain = text.toLowerCase().replaceAll(/\s+/g, ' ').trim().replace(/\.$/, '')
  return terms.noGrowth.some((words) => {
    if (!plain.startsWith(words)) return false
    return /^( (after|at|in|for|to|so) [\p{N}a-z ]{1,20})?$/u.test(plain.slice(words.length))
  })
}
