import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { LastingFunction, TroubleNeed } from './trouble-codes.ts'

export type SchemeId = 'cook-2010' | 'clavien-dindo-dogs' | 'vcog-ctcae-2'

/** How well assessors agreed with the scheme, with and without sequelae and failures to cure among what they graded. */
export type Agreement = { readonly all: number; readonly setApart: number }

/** A published way to grade complications by what they needed. Content holds the facts, one file for each. */
export type Scheme = {
  readonly id: SchemeId
  readonly name: string
  /** The edition that is meant, as people name it. */
  readonly version: string
  /** From the mildest to the worst. */
  readonly grades: readonly { readonly grade: string; readonly label: string }[]
  /** The grades that the wording fits, for each need; none where the reference does not say. Of a death, of a life in danger … */
  readonly byNeed: Readonly<Record<Exclude<TroubleNeed, 'not-known'>, Sourced<readonly string[]>>>
  /** A lasting function that decides by itself, whatever was needed. */
  readonly byLasting: Sourced<{ readonly is: LastingFunction; readonly grade: string }> | null
  /** Only complications that somebody has told from sequela and failure to cure are graded. */
  readonly onlyDecided: Provenance | null
  /** A person may have read the grade in the published terms. */
  readonly readByPerson: Provenance | null
  readonly agreement: Sourced<Agreement> | null
}

/** Stretches of time since the operation that a publication proposes, first to last. */
export type TroubleWindow = {
  readonly id: 'peri-operative' | 'short' | 'mid' | 'long'
  /** Up to and with so many months since the operation; null is open. */
  readonly untilMonths: number | null
}
