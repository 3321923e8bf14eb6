import { expit, log1pExp } from '../logistic.ts'
import { solveLinear } from '../solve-linear.ts'
import type { BetaMixture } from './beta-mixture.ts'
import { type FitNodes, type FitPoint, fitAt, mixtureOf } from './fit-slope.ts'
import { gridBelow } from './grid-below.ts'
import type { GridDistribution } from './grid-distribution.ts'
import { betaBelowLogOdds, logBetaDensity, type ShareDistribution } from './share-distribution.ts'
import { momentsOf } from './summary.ts'

/** A mixture of Betas near a distribution, with what it costs to use it instead. */
export type FittedMixture = {
  /** The heaviest part first. */
  readonly mixture: BetaMixture
  /** The Kullback-Leibler distance of the mixture from the distribution, 0 when they are the same. */
  readonly divergence: number
  /** The largest difference between the two distribution functions. */
  readonly largestDifference: number
}

/**
 * The nearest mixture of one, two or three Betas in the Kullback-Leibler sense, for storing and explaining only: results
 * are computed on the grid. Several starts, because the likelihood has several maxima; compare distances, not parameters.
 *
 * @example fitBetaMixture(predictive.distribution, 3).divergence // 0.0004
 */
export function fitBetaMixture({ grid }: ShareDistribution, parts: 1 | 2 | 3): FittedMixture {
  const nodes = nodesOf(grid)
  let best: FitPoint | undefined
  for (const start of startsOf(grid, parts)) {
    const found = climb(start, parts, nodes)
    if (!best || found.value > best.value + 1e-12) best = found
  }
  if (!best) throw new Error('A fit needs a start.')
  const mixture = [...mixtureOf(best.at, parts)].sort((one, other) => other.weight - one.weight)
  return { mixture, divergence: divergence(grid, mixture), largestDifference: largestDifference(grid, mixture) }
}

/** Fewer nodes do for a fit: 0.8 of the width of the peak apart. */
function nodesOf({ from, step, density }: GridDistribution): FitNodes {
  const top = density.reduce((most, height) => Math.max(most, height), 0)
  const peak = density.indexOf(top)
  const bend = -Math.log(((density[peak + 1] ?? 0) * (density[peak - 1] ?? 0)) / (top * top)) / (step * step)
  const stride = Math.max(1, Math.floor(Math.min(0.4, 0.8 / Math.sqrt(Math.max(bend, 1e-9))) / step))
  const chosen: { weight: number; logP: number; logQ: number }[] = []
  for (let t = peak % stride; t < density.length; t += stride) {
    const weight = (density[t] ?? 0) * step * stride
    const at = from + t * step
    if (weight > 1e-12) chosen.push({ weight, logP: -log1pExp(-at), logQ: -log1pExp(at) })
  }
  const sum = chosen.reduce((all, { weight }) => all + weight, 0)
  return {
    weight: Float64Array.from(chosen, ({ weight }) => weight / sum),
    logP: Float64Array.from(chosen, ({ logP }) => logP),
    logQ: Float64Array.from(chosen, ({ logQ }) => logQ),
  }
}

/** Parts of different sharpness about the same mean, and parts side by side. */
function startsOf(grid: GridDistribution, parts: number): number[][] {
  const { mean, sd } = momentsOf({ grid, weak: null })
  const size = (mean * (1 - mean)) / (sd * sd) - 1
  if (parts === 1) return [[Math.log(mean * size), Math.log((1 - mean) * size)]]
  const evenly = (first: number, last: number) =>
    Array.from({ length: parts }, (_, i) => first + ((last - first) * i) / (parts - 1))
  const start = (sizes: readonly number[], means: readonly number[]) => [
    ...new Array<number>(parts - 1).fill(0),
    ...sizes.map((one, i) => Math.log(one * (means[i] ?? mean))),
    ...sizes.map((one, i) => Math.log(one * (1 - (means[i] ?? mean)))),
  ]
  const same = evenly(0, 0).map(() => mean)
  const apart = evenly(-0.8, 0.8).map((shift) => expit(Math.log(mean / (1 - mean)) + shift))
  return [
    start(
      evenly(0.7, -0.7).map((power) => size * 4 ** power),
      same,
    ),
    start(
      evenly(-0.5, 1).map((power) => size * 3 ** power),
      same,
    ),
    start(
      evenly(-0.5, 1).map((power) => size * 3 ** power),
      apart,
    ),
  ]
}

/** Damped Newton steps uphill: each is tried, shortened while it does not climb. */
function climb(start: readonly number[], parts: number, nodes: FitNodes): FitPoint {
  let here = fitAt(start, parts, nodes)
  let damping = 1e-3
  for (let round = 0; round < 300; round += 1) {
    if (here.slope.every((one) => Math.abs(one) < 1e-9)) break
    const matrix = here.bend.map((row, i) =>
      row.map((value, k) => (i === k ? -value + damping * (Math.abs(value) + 1e-3) : -value)),
    )
    const step = solveLinear(matrix, here.slope)
    const longest = step ? Math.max(...step.map(Math.abs)) : 0
    const next =
      step && longest > 0
        ? fitAt(
            here.at.map((value, i) => value + (step[i] ?? 0) * Math.min(1, 2 / longest)),
            parts,
            nodes,
          )
        : undefined
    if (next && next.value > here.value) {
      const gain = next.value - here.value
      here = next
      damping = Math.max(1e-12, damping / 8)
      if (gain < 1e-12) break
    } else {
      damping *= 6
      if (damping > 1e8) break
    }
  }
  return here
}

function divergence({ from, step, density }: GridDistribution, mixture: BetaMixture): number {
  let sum = 0
  for (let t = 0; t < density.length; t += 1) {
    const height = density[t] ?? 0
    if (height * step < 1e-15) continue
    const logs = mixture.map((part) => Math.log(part.weight) + logBetaDensity(from + t * step, part))
    const top = Math.max(...logs)
    const other = top + Math.log(logs.reduce((all, log) => all + Math.exp(log - top), 0))
    sum += height * (Math.log(height) - other)
  }
  return sum * step
}

function largestDifference(grid: GridDistribution, mixture: BetaMixture): number {
  const { below, quantile } = gridBelow(grid)
  const [low, high] = [quantile(1e-4), quantile(1 - 1e-4)]
  let largest = 0
  for (let i = 0; i <= 200; i += 1) {
    const at = low + ((high - low) * i) / 200
    const other = mixture.reduce((all, part) => all + part.weight * betaBelowLogOdds(at, part), 0)
    largest = Math.max(largest, Math.abs(below(at) - other))
  }
  return largest
}
