import type { Species } from '../animal/species.ts'
import type { Sourced, SourceId } from '../evidence/sourced.ts'
import { answer, type Outcome, refuse } from '../outcome/outcome.ts'

/** The four signs of the Otitis Index Score, each 0 (none) to 3 (severe). Pain and itch are not among them. */
export const otis3Signs = ['erythema', 'swelling', 'erosion', 'exudate'] as const
export type Otis3Sign = (typeof otis3Signs)[number]

/** Null is "not assessed", which is not the same as 0, "looked and found none". */
export type Otis3Findings = Readonly<Record<Otis3Sign, number | null>>

export type Otis3Refusal =
  | { readonly because: 'sign-not-assessed'; readonly signs: readonly Otis3Sign[] }
  | { readonly because: 'sign-out-of-range'; readonly sign: Otis3Sign; readonly value: number }

/**
 * The OTIS-3 total of one ear, 0 to 12 (Nuttall & Bensignor, Vet Dermatol 2014;25:530).
 * Unknown while a sign is not assessed; one score per ear, because vertical and horizontal canal agreed.
 *
 * @example otis3Total({ erythema: 3, swelling: 3, erosion: 2, exudate: 3 }) // 11
 */
export function otis3Total(findings: Otis3Findings): Outcome<number, Otis3Refusal> {
  const missing = otis3Signs.filter((sign) => findings[sign] === null || findings[sign] === undefined)
  for (const sign of otis3Signs) {
    const value = findings[sign]
    if (typeof value === 'number' && !isGrade(value)) return refuse({ because: 'sign-out-of-range', sign, value })
  }
  if (missing.length > 0) return refuse({ because: 'sign-not-assessed', signs: missing })
  return answer(otis3Signs.reduce((total, sign) => total + (findings[sign] ?? 0), 0))
}

/** Where a published study drew the line, and how well the line held there. */
export type Otis3CutOff = {
  readonly species: Species
  readonly total: number
  readonly side: 'at-least' | 'at-most'
  readonly sensitivity: number
  readonly specificity: number
}
export type Otis3CutOffs = { readonly affected: Sourced<Otis3CutOff>; readonly success: Sourced<Otis3CutOff> }

export type Otis3Reading = {
  readonly total: number
  /** In the range that the study found in ears with otitis. */
  readonly affected: boolean
  /** In the range that the study called clinical success after treatment. */
  readonly success: boolean
  readonly sources: readonly SourceId[]
}
export type NoCutOff = { readonly because: 'no-cut-off-for-species'; readonly species: Species }

/**
 * Which side of the published lines a total falls. The lines come from dogs; for a cat there is none.
 *
 * @example readOtis3(5, 'dog', otis3CutOffs) // affected: true, success: false
 */
export function readOtis3(total: number, species: Species, cutOffs: Otis3CutOffs): Outcome<Otis3Reading, NoCutOff> {
  const { affected, success } = cutOffs
  if (affected.value.species !== species || success.value.species !== species) {
    return refuse({ because: 'no-cut-off-for-species', species })
  }
  return answer({
    total,
    affected: fallsOn(affected.value, total),
    success: fallsOn(success.value, total),
    sources: [...new Set([...affected.sources, ...success.sources])],
  })
}

function isGrade(value: number): boolean {
  return Number.isInteger(value) && value >= 0 && value <= 3
}

function fallsOn(cutOff: Otis3CutOff, total: number): boolean {
  return cutOff.side === 'at-least' ? total >= cutOff.total : total <= cutOff.total
}
