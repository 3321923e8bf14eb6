import type { Annotation, CodeableConcept, Coding, Quantity } from 'fhir/r4'
import { type PublicCode, systems } from '#content/exchange/fhir-codes.ts'
import type { Side } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { StoredQuantity } from '#core/journal/stored.ts'
import type { Unit } from '#core/units/unit.ts'
import { ExactNumber, type Written } from './written.ts'

/** A code of ours with its words; an id that FHIR cannot hold as a code stays words only. */
export function local(code: string, text: string): CodeableConcept {
  const isCode = /^[^\s]+(\s[^\s]+)*$/.test(code)
  return isCode ? { coding: [{ system: systems.local, code, display: text }], text } : { text }
}

/** A code of a list of ours whose words are the code itself: `could-not-see`. */
export function answer(code: string): CodeableConcept {
  return local(code, code.replaceAll('-', ' '))
}

export function words(text: string): CodeableConcept {
  return { text }
}

export function publicCoding(system: string, { value }: Sourced<PublicCode>): Coding {
  return { system, code: value.code, display: value.display }
}

export type AbsentReason = 'not-performed' | 'not-asked' | 'unknown' | 'error'

/** Why there is no value. Never an answer like "normal". */
export function absent(reason: AbsentReason): CodeableConcept {
  return { coding: [{ system: systems.absent, code: reason }], text: reason.replaceAll('-', ' ') }
}

/** The digits as they stand in the entry, never converted, with the UCUM unit. */
export function exactly({ value, unit }: StoredQuantity<Unit>): Written<Quantity> {
  return { value: new ExactNumber(withoutLeadingNoughts(value)), unit, system: systems.ucum, code: unit }
}

/** `05.0` is legal decimal text and not legal JSON. */
export function withoutLeadingNoughts(digits: string): string {
  return digits.replace(/^(-?)0+(?=\d)/, '$1')
}

/** The side is a word, so that no table of letters is needed to read it. */
export function sideSite(side: Side, what: 'ear' | 'eye' = 'ear'): CodeableConcept {
  return local(`${what}-${side}`, `${side} ${what}`)
}

export function notes(...texts: readonly (string | null | undefined)[]): Annotation[] {
  return texts
    .filter((text) => text !== null && text !== undefined && text !== '')
    .map((text) => ({ text: text as string }))
}
