import type { Interval } from '../proportion-interval.ts'
import { gridBelow } from './grid-below.ts'
import { between, type GridDistribution, normalised } from './grid-distribution.ts'
import { type Predictive, predictiveOf } from './predictive.ts'
import { momentsOf, type ShareSummary, summaryOf } from './summary.ts'
import { halved, updatedBy } from './update.ts'

/** Mean, spread and quantiles of a parameter, in its own unit (log odds for mu, their standard deviation for tau). */
export type ParameterSummary = {
  readonly mean: number
  readonly sd: number
  readonly interval: Interval
  readonly quantile: (probability: number) => number
}

/**
 * What the studies say of mu, of tau, and of the share of a typical clinic, expit mu. Not needed for a prediction, so it
 * is worked out only when asked for.
 *
 * @example posteriorOf(predictive).tau.mean // 0.379 in the published worked example
 */
export function posteriorOf(predictive: Predictive): {
  readonly mu: ParameterSummary
  readonly tau: ParameterSummary
  readonly typical: ShareSummary
} {
  // Steps that do for sums leave the quantiles of tau off by a millionth; half of them do not.
  const fine = predictiveOf(predictive.studies, predictive.priors, 2)
  const grid = muGrid(fine)
  let mean = 0
  let square = 0
  for (let t = 0; t < grid.density.length; t += 1) {
    const mass = (grid.density[t] ?? 0) * grid.step
    const at = grid.from + t * grid.step
    mean += mass * at
    square += mass * at * at
  }
  const { quantile } = gridBelow(grid)
  const mu = { mean, sd: Math.sqrt(square - mean * mean), interval: middle(quantile), quantile }
  return { mu, tau: tauSummary(fine), typical: summaryOf({ grid, weak: null }) }
}

const middle = (quantile: (probability: number) => number) => ({ low: quantile(0.025), high: quantile(0.975) })

/** Every column's weights brought to the table's own nodes through their interpolated logarithms, and added up. */
function muGrid({ posterior: { nodes, columns } }: Predictive): GridDistribution {
  const heights = new Float64Array(nodes.size)
  for (const { first, stride, weights } of columns) {
    const logs = weights.map((weight) => Math.log(Math.max(weight, Number.MIN_VALUE)))
    const last = (weights.length - 1) * stride
    for (let t = 0; t <= last; t += 1) {
      const weight = t % stride === 0 ? (weights[t / stride] ?? 0) : Math.exp(between(logs, t / stride))
      heights[first + t] = (heights[first + t] ?? 0) + weight / (stride * nodes.step)
    }
  }
  return normalised(nodes.from, nodes.step, heights).distribution
}

/** tau = unit · sinh x; the density of x is even, so that its two halves make one smooth grid. */
function tauSummary({ posterior: { tau, columns } }: Predictive): ParameterSummary {
  const last = Math.max(...columns.map(({ index }) => index))
  const half = new Float64Array(last + 1)
  let square = 0
  for (const column of columns) {
    const mass = column.weights.reduce((sum, weight) => sum + weight, 0)
    half[column.index] = (column.index === 0 ? 2 : 1) * mass
    square += mass * column.tau * column.tau
  }
  // Where no column was worth computing stands almost nothing, so that the logarithm can be followed everywhere.
  const least = 1e-30 * Math.max(...half)
  const logs = Float64Array.from({ length: 2 * last + 1 }, (_, i) =>
    Math.log(Math.max(half[Math.abs(i - last)] ?? 0, least)),
  )
  const fine = halved(halved(logs)).map((log) => Math.exp(log))
  const { distribution } = normalised(-last * tau.step, tau.step / 4, fine)
  const { quantile, below } = gridBelow(distribution)
  const at = (probability: number) => Math.max(0, tau.unit * Math.sinh(quantile((1 + probability) / 2)))
  // The mean of a value above 0 is the area above its distribution function.
  const mean = areaAbove((x) => 2 * (1 - below(x)), tau.unit, last * tau.step)
  return { mean, sd: Math.sqrt(square - mean * mean), interval: middle(at), quantile: at }
}

/** ∫ above(x) · unit · cosh x dx from 0, by Gauss-Legendre on short pieces. */
function areaAbove(above: (x: number) => number, unit: number, end: number): number {
  const points = [-0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664]
  const weights = [0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189]
  const pieces = Math.ceil(end / 0.1)
  const width = end / pieces
  let sum = 0
  for (let piece = 0; piece < pieces; piece += 1) {
    points.forEach((point, i) => {
      const x = (piece + 0.5 + point / 2) * width
      sum += ((weights[i] ?? 0) / 2) * width * above(x) * unit * Math.cosh(x)
    })
  }
  return sum
}

/**
 * What the studies together say of each study's own share: pulled towards the others, the more the smaller it is. It is
 * what the others let expect, with the study's own counts added, which is the same as one analysis of all of them.
 *
 * @returns mean and standard deviation of every study's share, in the order of `predictive.studies`.
 */
export function shrunkStudies({
  studies,
  priors,
}: Predictive): readonly { readonly mean: number; readonly sd: number }[] {
  return studies.map((study, index) => {
    const others = predictiveOf(studies.toSpliced(index, 1), priors)
    return momentsOf(updatedBy(others.distribution, study).distribution)
  })
}
