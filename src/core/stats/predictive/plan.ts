import { expit } from '../logistic.ts'
import type { Count } from '../proportion-interval.ts'
import { type Rough, roughly } from './approximate.ts'
import type { Nodes } from './likelihood-table.ts'
import type { Priors } from './priors.ts'

/** Where and how finely the posterior of mu and tau is computed. */
export type Plan = {
  readonly rough: Rough
  readonly nodes: Nodes
  /** tau at index j is unit · sinh(j · step): even about 0, so that half the weight at 0 keeps the trapezoid rule exact. */
  readonly tau: { readonly unit: number; readonly step: number; readonly likeliest: number; readonly last: number }
}

/** What is more than this below the highest logarithm is left out: 2e-15 of the whole. */
export const negligible = 34
/** Normal spreads that reach as far as `negligible`. */
export const farSpreads = 8.3
/** Own results of up to 1,500 cases are read off a grid of 0.04 without refining it. */
const usualStep = 0.04
const mostNodes = 1_500_000
const mostCells = 6_000_000

/**
 * @param finer 1, or 2 for half the steps in every direction (the check that halving changes nothing).
 * @example planOf([{ events: 23, total: 107 }], usualPriors)
 */
export function planOf(counts: readonly Count[], priors: Priors, finer = 1): Plan {
  const rough = roughly(counts, priors)
  const unit = tauUnit(rough, priors)
  const range = tauRange(rough, unit, priors)
  const tauStep = range.step / finer
  const likeliest = Math.round(range.likeliest / tauStep)
  const last = Math.ceil(range.last / tauStep)
  const tauAt = (x: number) => unit * Math.sinh(x)
  const smallest = tauAt(Math.max(range.first, tauStep))
  const ends = muEnds(counts, rough, (i) => tauAt(range.first + ((range.last - range.first) * i) / 40), priors)
  const widest = farSpreads * tauAt(last * tauStep)
  const low = Math.min(ends.low, ...rough.studies.map(({ at }) => at)) - widest
  const high = Math.max(ends.high, ...rough.studies.map(({ at }) => at)) + widest
  const wanted =
    Math.min(usualStep, 0.8 * narrowest(counts, rough, smallest, tauAt(range.likeliest)), 0.4 * ends.narrowest) / finer
  const most = Math.min(mostNodes, mostCells / Math.max(1, counts.length))
  const step = Math.max(wanted, (high - low) / most)
  return {
    rough,
    nodes: { from: low, step, size: Math.ceil((high - low) / step) + 1 },
    tau: { unit, step: tauStep, likeliest, last },
  }
}

/** The smallest tau that the studies can tell from none. */
function tauUnit({ studies }: Rough, { tauScale }: Priors): number {
  if (studies.length === 0) return tauScale
  const typical = studies.reduce((sum, { variance }) => sum + 1 / variance, 0) / studies.length
  return Math.min(tauScale, typical ** -0.5 * studies.length ** -0.25)
}

function tauRange(rough: Rough, unit: number, { tauScale }: Priors) {
  const height = (x: number) => rough.logTau(unit * Math.sinh(x)) + Math.log(Math.cosh(x))
  const pace = 0.1
  const heights = Array.from({ length: Math.ceil(Math.asinh((12 * tauScale) / unit) / pace) + 1 }, (_, i) =>
    height(i * pace),
  )
  const top = Math.max(...heights)
  const counted = heights.map((value) => value > top - negligible - 4)
  const likeliest = heights.indexOf(top) * pace
  const near = 0.02
  const bend = (height(likeliest + near) - 2 * height(likeliest) + height(Math.abs(likeliest - near))) / near ** 2
  return {
    first: counted.indexOf(true) * pace,
    likeliest,
    last: (counted.lastIndexOf(true) + 1) * pace,
    step: Math.min(0.22, bend < 0 ? 0.7 / Math.sqrt(-bend) : 0.22),
  }
}

/** How far mu reaches: where the normal approximation ends, and further where hardly an event (or non-event) holds it. */
function muEnds(counts: readonly Count[], rough: Rough, tauAt: (i: number) => number, { mu }: Priors) {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  let narrowest = Number.POSITIVE_INFINITY
  for (let i = 0; i <= 40; i += 1) {
    const { mean, sd } = rough.muGiven(tauAt(i))
    low = Math.min(low, mean - 1.3 * farSpreads * sd)
    high = Math.max(high, mean + 1.3 * farSpreads * sd)
    narrowest = Math.min(narrowest, sd)
  }
  const events = counts.reduce((sum, count) => sum + count.events, 0)
  const others = counts.reduce((sum, count) => sum + count.total, 0) - events
  const far = 1.3 * negligible
  return {
    low: Math.min(low, Math.max(Math.min(mu.mean, low) - farSpreads * mu.sd, high - far / events)),
    high: Math.max(high, Math.min(Math.max(mu.mean, high) + farSpreads * mu.sd, low + far / others)),
    narrowest,
  }
}

/** The least width of likelihood times normal spread; the likelihood is sharpest somewhere between its peak and mu. */
function narrowest(counts: readonly Count[], rough: Rough, tau: number, likeliestTau: number): number {
  const { mean } = rough.muGiven(likeliestTau)
  let information = 0
  counts.forEach(({ total }, index) => {
    const peak = rough.studies[index]?.at ?? 0
    const sharpest = Math.min(Math.max(0, Math.min(peak, mean)), Math.max(peak, mean))
    const share = expit(sharpest)
    information = Math.max(information, total * share * (1 - share))
  })
  return 1 / Math.sqrt(1 / (tau * tau) + information)
}
