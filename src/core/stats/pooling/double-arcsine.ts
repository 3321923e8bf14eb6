import type { Count } from '../proportion-interval.ts'
import type { Effect } from './effects.ts'

/**
 * The double arcsine of a proportion (Freeman & Tukey), the half of both angles, with its variance.
 *
 * @example doubleArcsine({ events: 7, total: 52 }) // { at: 0.3854…, variance: 0.00476… }
 */
export function doubleArcsine({ events, total }: Count): Effect {
  return { at: angle(events, total), variance: 1 / (4 * total + 2) }
}

/**
 * Back to a proportion (Miller, Am Stat 1978;32:138), for a number of cases: here the harmonic mean of the studies. The
 * answer depends on that number and can mislead (Schwarzer et al., Res Synth Methods 2019;10:476–483); for comparison only.
 *
 * @example fromDoubleArcsine(0.3655, 37.9) // 0.118…
 */
export function fromDoubleArcsine(at: number, cases: number): number {
  if (at <= angle(0, cases)) return 0
  if (at >= angle(cases, cases)) return 1
  const sine = Math.sin(2 * at)
  const root = 1 - (sine + (sine - 1 / sine) / cases) ** 2
  return 0.5 * (1 - Math.sign(Math.cos(2 * at)) * Math.sqrt(Math.max(0, root)))
}

/** The harmonic mean of the studies' sizes. */
export function harmonicMean(counts: readonly Count[]): number {
  return counts.length / counts.reduce((sum, { total }) => sum + 1 / total, 0)
}

function angle(events: number, total: number): number {
  return 0.5 * (Math.asin(Math.sqrt(events / (total + 1))) + Math.asin(Math.sqrt((events + 1) / (total + 1))))
}
