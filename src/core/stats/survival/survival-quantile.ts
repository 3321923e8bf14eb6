import type { SurvivalCurve } from './kaplan-meier.ts'
import { type LimitScale, limitsOf, twoSided } from './survival-limits.ts'

/** The time by which that share has had the event, with its limits; null is "not reached", which is a result. */
export type TimeQuantile = { readonly value: number | null; readonly low: number | null; readonly high: number | null }

/** Shares closer than this are the same: sums of fractions end a rounding apart. */
const sameWithin = 1.5e-8

/**
 * The first time at which the curve is at or below one minus the probability; where it lies exactly on it over a stretch,
 * the middle of that stretch. The limits are where the limits of the curve cross the same height.
 *
 * @example survivalQuantile(curve, 0.5, 'log-log').value // the median
 * Reference: Brookmeyer & Crowley, Biometrics 1982;38:29–41 (remembered).
 */
export function survivalQuantile(
  curve: SurvivalCurve,
  probability: number,
  scale: LimitScale,
  confidence = 0.95,
): TimeQuantile {
  const height = 1 - probability
  const z = twoSided(confidence)
  const limit = (end: 'low' | 'high') => (share: number, variance: number) => limitsOf(share, variance, z, scale)[end]
  return {
    value: crossing(curve, height, (share) => share),
    low: crossing(curve, height, limit('low')),
    high: crossing(curve, height, limit('high')),
  }
}

function crossing(
  { table, survival, logVariance }: SurvivalCurve,
  height: number,
  of: (share: number, logVariance: number) => number | null,
): number | null {
  const lines = table.time.length
  for (let i = 0; i < lines; i += 1) {
    // Only an event moves the curve.
    if ((table.events[i] ?? 0) === 0) continue
    const share = of(survival[i] ?? 0, logVariance[i] ?? 0)
    if (share === null || share >= height + sameWithin) continue
    const first = table.time[i] ?? 0
    return Math.abs(share - height) < sameWithin ? (first + endOfFlat(table, i)) / 2 : first
  }
  return null
}

/** The next time at which the curve falls, or the last time on record. */
function endOfFlat({ time, events }: SurvivalCurve['table'], line: number): number {
  for (let i = line + 1; i < time.length; i += 1) if ((events[i] ?? 0) > 0) return time[i] ?? 0
  return time[time.length - 1] ?? 0
}
