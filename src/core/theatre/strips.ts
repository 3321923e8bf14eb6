import { Decimal, type Quantity } from '#core/units/quantity.ts'
import { type Observable, type Observation, type ObservedValue, wholeMinutes } from './ledger.ts'

export type StripPoint = {
  readonly at: string
  readonly value: Decimal
  /** Marked as no true value: drawn open, and never a part of the line. */
  readonly artefact: boolean
}

/** One variable over the time of an anaesthetic. */
export type Strip = {
  readonly what: Observable
  readonly unit: ObservedValue['value']['unit']
  readonly points: readonly StripPoint[]
  /** Points that may be joined, because no gap lies between them; a point that stands alone is a run of one. */
  readonly runs: readonly (readonly StripPoint[])[]
  /** Of the true values; where all are artefacts, of those. */
  readonly lowest: Decimal
  readonly highest: Decimal
}

/** The order in which they stand under each other. */
const order = [
  'heart-rate',
  'systolic',
  'mean',
  'diastolic',
  'oxygen-saturation',
  'end-tidal-co2',
  'respiratory-rate',
  'temperature',
  'vapour',
  'fluids',
] as const satisfies readonly Observable[]

/**
 * One strip for each variable and unit that was measured at all. Two points are joined only where they follow each other
 * within `every`; an artefact is shown and joins nothing.
 *
 * @example stripsOf(ledger.observations, quantity('5', 'min'))[0]?.runs.length // 2, with one gap between
 */
export function stripsOf(observations: readonly Observation[], every: Quantity<'min'>): Strip[] {
  return order.flatMap((what) => {
    const found = new Map<Strip['unit'], StripPoint[]>()
    for (const { at, body } of observations) {
      for (const one of body.values) {
        if (one.what !== what) continue
        const point = { at, value: new Decimal(one.value.value), artefact: one.artefact }
        found.set(one.value.unit, [...(found.get(one.value.unit) ?? []), point])
      }
    }
    return [...found].map(([unit, points]) => stripOf(what, unit, points, every))
  })
}

function stripOf(what: Observable, unit: Strip['unit'], points: readonly StripPoint[], every: Quantity<'min'>): Strip {
  const runs: StripPoint[][] = []
  for (const point of points) {
    if (point.artefact) continue
    const run = runs.at(-1)
    const before = run?.at(-1)
    if (run && before && every.value.gte(wholeMinutes(before.at, point.at))) run.push(point)
    else runs.push([point])
  }
  const trusted = points.filter(({ artefact }) => !artefact)
  const values = (trusted.length === 0 ? points : trusted).map(({ value }) => value)
  return { what, unit, points, runs, lowest: Decimal.min(...values), highest: Decimal.max(...values) }
}
