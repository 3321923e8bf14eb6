import { readQuantityText } from '#core/forms/read-leaf.ts'
import type { FormRefusalCode, Place } from '#core/forms/refusal.ts'
import type { Unit } from '#core/units/unit.ts'
import { isPressure } from './last-values.ts'
import type { Observable, Observation, ObservedValue } from './ledger.ts'

/** What somebody typed of one look. An empty text was not measured. */
export type TypedLook = {
  readonly values: Readonly<Partial<Record<Observable, string>>>
  /** How the pressures were measured. */
  readonly method: string
}

export type LookFault =
  | { readonly at: Observable; readonly because: FormRefusalCode; readonly about: Readonly<Record<string, string>> }
  | { readonly at: 'method'; readonly because: 'no-method' }
  | { readonly at: 'look'; readonly because: 'nothing-typed' }

export type ReadLook = { readonly values: readonly ObservedValue[]; readonly faults: readonly LookFault[] }

/**
 * Reads one look as it was typed: whatever can be read, and what must be typed or said before it can be kept. A value is
 * never refused for being unlikely; a pressure is not kept without how it was measured.
 *
 * @example readLook({ values: { mean: '74' }, method: '' }, units, place).faults[0]?.because // 'no-method'
 */
export function readLook(
  { values, method }: TypedLook,
  units: Readonly<Record<Observable, Unit>>,
  place: Pick<Place, 'decimalMark'>,
): ReadLook {
  const how = method.trim()
  const typed = Object.entries(values).filter(([, text]) => text.trim() !== '') as [Observable, string][]
  const read: ObservedValue[] = []
  const faults: LookFault[] = []
  for (const [what, text] of typed) {
    const one = readQuantityText(text, [units[what]], place)
    if (one.kind === 'refusal') faults.push({ at: what, ...one.refusal })
    else {
      const value = one.answer as ObservedValue['value']
      read.push({ what, value, method: isPressure(what) && how !== '' ? how : null, artefact: false })
    }
  }
  if (typed.length === 0) faults.push({ at: 'look', because: 'nothing-typed' })
  if (how === '' && typed.some(([what]) => isPressure(what))) faults.push({ at: 'method', because: 'no-method' })
  return { values: read, faults }
}

/**
 * The ways in which pressures were measured in this anaesthetic, the last one first: to be offered, never to be filled in.
 *
 * @example methodsOf(ledger.observations) // ['oscillometric, left forelimb', 'Doppler, tail']
 */
export function methodsOf(observations: readonly Observation[]): string[] {
  const methods = observations.flatMap(({ body }) =>
    body.values.flatMap(({ what, method }) => (isPressure(what) && method !== null ? [method] : [])),
  )
  return [...new Set(methods.reverse())]
}
