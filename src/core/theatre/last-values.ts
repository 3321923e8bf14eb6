import { type AnyQuantity, Decimal } from '#core/units/quantity.ts'
import type { Observable, Observation, ObservedValue } from './ledger.ts'

export type LastValue = { readonly at: string; readonly value: ObservedValue }

/**
 * The last true value of each variable, for looking at beside the next one. It is never the next one.
 *
 * @example lastValues(ledger.observations).get('mean')?.value.method // 'oscillometric, left forelimb'
 */
export function lastValues(observations: readonly Observation[]): ReadonlyMap<Observable, LastValue> {
  const last = new Map<Observable, LastValue>()
  for (const { at, body } of observations) {
    for (const value of body.values) if (!value.artefact) last.set(value.what, { at, value })
  }
  return last
}

export const pressures = ['systolic', 'mean', 'diastolic'] as const satisfies readonly Observable[]

/** Whether a variable is a pressure, which says nothing without how it was measured. */
export function isPressure(what: Observable): what is (typeof pressures)[number] {
  return (pressures as readonly Observable[]).includes(what)
}

/** Why a value is worth a second look before it is kept. None of them forbids it: what was measured is written down. */
export type LookAgain = {
  readonly because: 'nought' | 'above-hundred' | 'ten-times' | 'a-tenth' | 'pressures-out-of-order'
  readonly what: Observable
  /** The last value, in its own unit, where it is compared with it. */
  readonly last: ObservedValue['value'] | null
}

export type JustTyped = { readonly what: Observable; readonly value: ObservedValue['value'] }

/**
 * What arithmetic alone can see in values that were just typed: nothing, more than all, ten times or a tenth of the last
 * one (a slipped point), a mean above its systolic. No limit of any species stands behind it.
 *
 * @example lookAgain([{ what: 'temperature', value: { value: '378', unit: 'Cel' } }], last)[0]?.because // 'ten-times'
 */
export function lookAgain(typed: readonly JustTyped[], last: ReadonlyMap<Observable, LastValue>): LookAgain[] {
  const found = typed.flatMap(({ what, value }): LookAgain[] => {
    const now = new Decimal(value.value)
    if (now.isZero() && !mayBeNought.includes(what)) return [{ because: 'nought', what, last: null }]
    if (now.gt(100) && perHundred.includes(value.unit)) return [{ because: 'above-hundred', what, last: null }]
    const before = last.get(what)?.value.value
    if (!before || before.unit !== value.unit) return []
    const then = new Decimal(before.value)
    if (then.isZero() || now.isZero()) return []
    if (now.gte(then.times(10))) return [{ because: 'ten-times', what, last: before }]
    if (now.lte(then.div(10))) return [{ because: 'a-tenth', what, last: before }]
    return []
  })
  return [...found, ...outOfOrder(typed)]
}

/** An animal may not breathe by itself, and vapour and fluids may be off. */
const mayBeNought: readonly Observable[] = ['respiratory-rate', 'vapour', 'fluids']
const perHundred: readonly AnyQuantity['unit'][] = ['%', '%{vol}']

function outOfOrder(typed: readonly JustTyped[]): LookAgain[] {
  const known = pressures.flatMap((what) => {
    const one = typed.find((value) => value.what === what)
    return one ? [{ what, value: new Decimal(one.value.value) }] : []
  })
  return known.slice(1).flatMap(({ what, value }, index) => {
    const above = known[index]
    return above && value.gt(above.value) ? [{ because: 'pressures-out-of-order', what, last: null } as const] : []
  })
}
