import { Decimal, Quantity } from '#core/units/quantity.ts'

/** Whole drops in a minute, and what they really give in an hour. */
export type Drops = { readonly count: Quantity<'/min'>; readonly gives: Quantity<'mL/h'> }

/** A rate as somebody counts it at a gravity set. */
export type Drip = Drops & {
  readonly set: Quantity<'[drp]/mL'>
  readonly perMinute: Quantity<'/min'>
  /** Of a fluid that is cut hour by hour. */
  readonly hours: readonly (Drops & { readonly hour: number })[]
  /** The rate and the deficit together. */
  readonly together?: Drops
}

/**
 * The drops of a rate: drops per mL × mL/h ÷ 60, and the nearest whole number of them; rounded down where the nearest
 * would give more than `most`.
 *
 * @example dropsOf(quantity('250', 'mL/h'), quantity('20', '[drp]/mL')).count // 83 a minute
 */
export function dropsOf(
  rate: Quantity<'mL/h'>,
  set: Quantity<'[drp]/mL'>,
  most?: Quantity<'mL/h'>,
): Drops & { readonly perMinute: Quantity<'/min'> } {
  const perMinute = set.value.times(rate.value).div(60)
  const given = (count: Decimal) => count.times(60).div(set.value)
  const nearest = perMinute.toDecimalPlaces(0, Decimal.ROUND_HALF_UP)
  const count = most && given(nearest).gt(most.value) ? perMinute.floor() : nearest
  return {
    perMinute: new Quantity(perMinute, '/min'),
    count: new Quantity(count, '/min'),
    gives: new Quantity(given(count), 'mL/h'),
  }
}
