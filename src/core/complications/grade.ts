import type { Provenance } from '#core/evidence/sourced.ts'
import type { Scheme, SchemeId } from './scheme.ts'
import { classOf } from './standing.ts'
import type { TroubleFacts } from './trouble.ts'
import type { TroubleClass } from './trouble-codes.ts'

type Of = { readonly scheme: SchemeId; readonly version: string }

/** What one scheme says of one trouble. Where it says nothing, why, and never a guess. */
export type Graded =
  | (Of & {
      readonly kind: 'graded'
      readonly grade: string
      readonly by: 'need' | 'lasting' | 'person'
      readonly fact: Provenance
      /** The worse grade that an unacceptable function for good would make of it, while that is not known. */
      readonly open: string | null
    })
  | (Of & { readonly kind: 'between'; readonly grades: readonly string[]; readonly fact: Provenance })
  | (Of & { readonly kind: 'not-a-complication'; readonly class: Exclude<TroubleClass, 'complication'> })
  | (Of & {
      readonly kind: 'unknown'
      readonly because: 'need-not-known' | 'before-not-known' | 'not-decided' | 'text-not-held'
      readonly fact: Provenance | null
    })

/**
 * The grade of one trouble by one scheme.
 *
 * @example gradeBy(cook2010, gapThatNeededNothing) // { kind: 'graded', grade: 'minor', … }
 */
export function gradeBy(scheme: Scheme, trouble: TroubleFacts): Graded {
  const of = { scheme: scheme.id, version: scheme.version }
  const held = classOf(trouble)
  if (held !== null && held !== 'complication') return { ...of, kind: 'not-a-complication', class: held }
  if (held === null && trouble.before === 'not-known')
    return { ...of, kind: 'unknown', because: 'before-not-known', fact: null }
  if (held === null && scheme.onlyDecided)
    return { ...of, kind: 'unknown', because: 'not-decided', fact: scheme.onlyDecided }
  if (scheme.byLasting && trouble.lasting === scheme.byLasting.value.is)
    return {
      ...of,
      kind: 'graded',
      grade: scheme.byLasting.value.grade,
      by: 'lasting',
      fact: scheme.byLasting,
      open: null,
    }
  return byNeed(scheme, trouble)
}

function byNeed(scheme: Scheme, { needed, lasting, read }: TroubleFacts): Graded {
  const of = { scheme: scheme.id, version: scheme.version }
  const fact = needed === 'not-known' ? null : scheme.byNeed[needed]
  const [grade, ...more] = fact?.value ?? []
  // Death and a life in danger have one grade in every scheme: no reading of a term makes less of it.
  if (fact && grade !== undefined) {
    if (more.length > 0) return { ...of, kind: 'between', grades: [grade, ...more], fact }
    const worse = scheme.byLasting?.value.grade ?? null
    return {
      ...of,
      kind: 'graded',
      grade,
      by: 'need',
      fact,
      open: lasting === 'not-known' && worse !== grade ? worse : null,
    }
  }
  if (read && scheme.readByPerson)
    return { ...of, kind: 'graded', grade: read.grade, by: 'person', fact: scheme.readByPerson, open: null }
  if (fact) return { ...of, kind: 'unknown', because: 'text-not-held', fact }
  return { ...of, kind: 'unknown', because: 'need-not-known', fact: null }
}
