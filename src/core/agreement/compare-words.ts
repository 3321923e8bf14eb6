/** Places are written `a.b.0`; `*` stands for any one step. */
export type WordsAllowances = {
  /** Not words: must be the same in every language, and may not be left out. */
  readonly facts: readonly string[]
  /** Each language has its own, or none. */
  readonly own: readonly string[]
  /** Stand in English only, because no owner reads them. */
  readonly forTheClinic: readonly Allowance[]
  /** Rightly the same text in that language. */
  readonly same: Readonly<Record<string, readonly Allowance[]>>
}
type Allowance = { readonly path: string; readonly because: string }

export type WordsTrouble = {
  readonly path: string
  readonly trouble:
    | 'missing'
    | 'needless'
    | 'empty'
    | 'not-translated'
    | 'allowed-in-vain'
    | 'other-places'
    | 'other-numbers'
    | 'other-length'
    | 'other-fact'
}

/**
 * Walks the English words and those of another language side by side: what is missing, empty, only copied, of another
 * length, with other `{places}` or other numbers. Nothing found means that the language is whole and says the same numbers.
 *
 * @example compareWords({ of: '5 of 100' }, { of: '6 de cada 100' }, allowances, 'es') // [{ path: 'of', trouble: 'other-numbers' }]
 */
export function compareWords(
  english: unknown,
  other: unknown,
  allowances: WordsAllowances,
  language: string,
): WordsTrouble[] {
  const same = (allowances.same[language] ?? []).map(({ path }) => ({ path, used: false }))
  const clinic = allowances.forTheClinic.map(({ path }) => path)
  const isOne = (patterns: readonly string[], path: string) => patterns.some((pattern) => fits(pattern, path))

  const walk = (first: unknown, second: unknown, path: string): WordsTrouble[] => {
    const found = (trouble: WordsTrouble['trouble']) => [{ path, trouble }]
    if (isOne(allowances.own, path) || isOne(clinic, path)) return []
    if (second === undefined) return found('missing')
    if (first === undefined) return found('needless')
    if (isOne(allowances.facts, path))
      return JSON.stringify(first) === JSON.stringify(second) ? [] : found('other-fact')
    if (typeof first === 'string' && typeof second === 'string') {
      if (first === second && first !== '') {
        const allowed = same.filter((one) => fits(one.path, path))
        for (const one of allowed) one.used = true
        return allowed.length > 0 ? [] : found('not-translated')
      }
      return sentenceTrouble(first, second).flatMap(found)
    }
    if (first === null || typeof first !== 'object') return first === second ? [] : found('other-fact')
    if (second === null || typeof second !== 'object') return found('other-fact')
    if (Array.isArray(first) && (!Array.isArray(second) || first.length !== second.length)) return found('other-length')
    const sourced = 'known' in first && 'checked' in first
    const places = new Set([...Object.keys(first), ...Object.keys(second)])
    return [...places].flatMap((place) => {
      const [one, another] = [memberOf(first, place), memberOf(second, place)]
      const at = path === '' ? place : `${path}.${place}`
      if (!sourced || !provenance.has(place)) return walk(one, another, at)
      return JSON.stringify(one) === JSON.stringify(another) ? [] : [{ path: at, trouble: 'other-fact' as const }]
    })
  }

  const troubles = walk(english, other, '')
  const inVain = same.filter(({ used }) => !used).map(({ path }) => ({ path, trouble: 'allowed-in-vain' as const }))
  return [...troubles, ...inVain]
}

/** What is wrong with one sentence beside the English one. */
export function sentenceTrouble(english: string, other: string): WordsTrouble['trouble'][] {
  if (other.trim() === '') return ['empty']
  return [
    ...(listed(english, placePattern) === listed(other, placePattern) ? [] : ['other-places' as const]),
    ...(listed(english, numberPattern) === listed(other, numberPattern) ? [] : ['other-numbers' as const]),
  ]
}

/** Where a fact comes from is no wording: the same in every language. */
const provenance = new Set(['sources', 'where', 'known', 'strength', 'confidence', 'checked'])

const placePattern = /\{\w+\}/g
const numberPattern = /\d+(?:[.,]\d+)*/g

function listed(text: string, pattern: RegExp): string {
  return (text.match(pattern) ?? []).sort().join(' ')
}

function memberOf(of: object, place: string): unknown {
  return (of as Readonly<Record<string, unknown>>)[place]
}

function fits(pattern: string, path: string): boolean {
  const steps = pattern.split('.')
  const taken = path.split('.')
  return steps.length === taken.length && steps.every((step, at) => step === '*' || step === taken[at])
}
