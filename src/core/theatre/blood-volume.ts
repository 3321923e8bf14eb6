import type { Sourced } from '#core/evidence/sourced.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { type Decimal, type Quantity, scale, times } from '#core/units/quantity.ts'

/** Circulating blood per kilogram: the figure counted with, and the range that sources quote. */
export type BloodPerKg = {
  readonly counted: Quantity<'mL/kg'>
  readonly low: Quantity<'mL/kg'>
  readonly high: Quantity<'mL/kg'>
}

export type BloodVolume = {
  readonly counted: Quantity<'mL'>
  readonly low: Quantity<'mL'>
  readonly high: Quantity<'mL'>
}

/**
 * The blood volume of an animal, with the span that the quoted ranges give. Lean weight in the obese.
 *
 * @example bloodVolume(quantity('32', 'kg'), dog).counted // 2880 mL at 90 mL/kg
 */
export function bloodVolume(weight: Quantity<'kg'>, perKg: Sourced<BloodPerKg>): BloodVolume {
  const { counted, low, high } = perKg.value
  return {
    counted: times(counted, weight, 'mL'),
    low: times(low, weight, 'mL'),
    high: times(high, weight, 'mL'),
  }
}

export type AllowableLoss = { readonly volume: Quantity<'mL'>; readonly dividedBy: 'start' | 'mean' }
export type AllowableLossRefusal =
  | { readonly because: 'lowest-above-start'; readonly start: Decimal; readonly lowest: Decimal }
  | { readonly because: 'haematocrit-not-positive' }

/**
 * The loss that brings the haematocrit (%) from `start` to `lowest` when volume is kept up. Two formulas are in use;
 * the answer names which: divided by the starting value, or by the mean of both (a larger answer).
 *
 * @example allowableLoss(quantity('3900', 'mL'), { start: 45, lowest: 30, dividedBy: 'start' }) // 1300 mL
 */
export function allowableLoss(
  blood: Quantity<'mL'>,
  by: { readonly start: Decimal; readonly lowest: Decimal; readonly dividedBy: 'start' | 'mean' },
): Outcome<AllowableLoss, AllowableLossRefusal> {
  const { start, lowest, dividedBy } = by
  if (start.lte(0) || lowest.lte(0)) return refuse({ because: 'haematocrit-not-positive' })
  if (lowest.gt(start)) return refuse({ because: 'lowest-above-start', start, lowest })
  const divisor = dividedBy === 'start' ? start : start.plus(lowest).div(2)
  return answer({ volume: scale(blood, start.minus(lowest).div(divisor)), dividedBy })
}
