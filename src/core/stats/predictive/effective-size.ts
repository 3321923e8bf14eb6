import { expit } from '../logistic.ts'
import { between } from './grid-distribution.ts'
import { logBetaDensity, type ShareDistribution } from './share-distribution.ts'
import { momentsOf } from './summary.ts'

/** What a prior is worth, in earlier cases. */
export type EffectiveSize = {
  /** From mean and spread alone; the cautious one. Can be below 1. */
  readonly moment: number
  /** The expected local-information ratio (Neuenschwander et al., Biometrics 2020;76:578–587); null where it does not exist. */
  readonly local: number | null
  /** The flat ends decide the local one, so it is withheld. */
  readonly tailDominated: boolean
}

/**
 * How many earlier cases a distribution is worth.
 *
 * @example effectiveSize(predictive.distribution) // { moment: 24.07…, local: 36.99…, tailDominated: false }
 */
export function effectiveSize(distribution: ShareDistribution): EffectiveSize {
  const { mean, sd } = momentsOf(distribution)
  const moment = (mean * (1 - mean)) / (sd * sd) - 1
  const { weak } = distribution
  if (weak && (weak.a < 1 || weak.b < 1)) return { moment, local: null, tailDominated: false }
  const whole = localInformation(distribution, 1e-11)
  const tailDominated = !(Math.abs(whole / localInformation(distribution, 1e-8) - 1) < 2e-4)
  return { moment, local: tailDominated ? null : whole, tailDominated }
}

/**
 * E[p(1−p)·(d ln f/dp)²] + 2 − f(0) − f(1), which is E[−(d² ln f/dp²)·p(1−p)] by parts; on the log odds scale, where
 * d ln f/dp · p(1−p) = d ln g/dθ − (1 − 2p). Where the density is below `least` of its highest it is left out.
 */
function localInformation({ grid, weak }: ShareDistribution, least: number): number {
  const { step, density } = grid
  const logs = density.map(Math.log)
  const reach = weak ? 40 : 0
  const before = Math.max(0, Math.ceil((grid.from + reach) / step))
  const after = Math.max(0, Math.ceil((reach - (grid.from + density.length * step)) / step))
  const heights: [height: number, score: number, share: number][] = []
  for (let t = -before; t < density.length + after; t += 1) {
    const at = grid.from + t * step
    const share = expit(at)
    const ownHeight = (density[t] ?? 0) * (1 - (weak?.weight ?? 0))
    const ownSlope = t >= 0 && t < density.length ? slope(logs, t) / step : 0
    const weakHeight = weak ? weak.weight * Math.exp(logBetaDensity(at, weak)) : 0
    const weakSlope = weak ? weak.a * (1 - share) - weak.b * share : 0
    const height = ownHeight + weakHeight
    heights.push([height, (ownHeight * ownSlope + weakHeight * weakSlope) / height - (1 - 2 * share), share])
  }
  const most = heights.reduce((top, [height]) => Math.max(top, height), 0)
  let sum = 0
  for (const [height, score, share] of heights) {
    if (height > least * most) sum += (height * score * score) / (share * (1 - share))
  }
  const atEnds = weak ? weak.weight * ((weak.a === 1 ? weak.b : 0) + (weak.b === 1 ? weak.a : 0)) : 0
  return sum * step + 2 - atEnds
}

/** The slope at a node, per step. */
function slope(logs: Float64Array, t: number): number {
  const by = [4 / 5, -1 / 5, 4 / 105, -1 / 280]
  const inside = t >= 4 && t < logs.length - 4
  const value = (position: number) => (inside ? (logs[position] ?? 0) : between(logs, position))
  return by.reduce((sum, weight, i) => sum + weight * (value(t + i + 1) - value(t - i - 1)), 0)
}
