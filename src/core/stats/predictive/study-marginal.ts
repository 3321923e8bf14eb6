import { rootTwoPi } from '../special-functions.ts'
import type { LikelihoodTable } from './likelihood-table.ts'

/** The normal density about a node, by distance in nodes, not yet divided by its spread. */
export type Kernel = { readonly tau: number; readonly values: Float64Array; readonly reach: number }

/** A sum takes steps of at most this share of the integrand's own width: an error below 1e-13 of the integral. */
const stepOverWidth = 0.8
/** The likelihood has poles at a distance of π from the real line; steps of 0.35 keep their share below 1e-12. */
const longestStep = 0.35

/**
 * The normal spread tau about a node, as a table by distance.
 *
 * @example kernelOf(0.3, { step: 0.04, size: 400 })
 */
export function kernelOf(tau: number, { step, size }: { readonly step: number; readonly size: number }): Kernel {
  const reach = Math.min(size - 1, Math.ceil((38 * tau) / step))
  const values = new Float64Array(reach + 1)
  const perNode = 0.5 * (step / tau) ** 2
  const bend = Math.exp(-2 * perNode)
  // Each value from its neighbour, begun anew from time to time: two exponentials instead of sixty-four.
  for (let start = 0; start <= reach; start += 64) {
    let value = Math.exp(-perNode * start * start)
    let ratio = Math.exp(-perNode * (2 * start + 1))
    const end = Math.min(reach, start + 63)
    for (let distance = start; distance <= end; distance += 1) {
      values[distance] = value
      value *= ratio
      ratio *= bend
    }
  }
  return { tau, values, reach }
}

/**
 * ∫ likelihood(θ) N(θ | node, tau²) dθ by the trapezoid rule over table nodes, in both directions from the highest point of
 * the integrand, in steps fitted to its width. All terms are positive, so the answer keeps its digits however small it is.
 *
 * @param highest for each study the node of the highest point for a neighbouring node; kept up to date.
 */
export function studyMarginal(
  index: number,
  table: LikelihoodTable,
  kernel: Kernel,
  node: number,
  highest: Int32Array,
): number {
  const { step, size, spread } = table
  const { values, reach, tau } = kernel
  const study = table.studies[index]
  if (!study) throw new Error(`No study ${index}.`)
  const { likelihood } = study
  const peak = climb(study.log, 0.5 * (step / tau) ** 2, node, highest[index] ?? node)
  highest[index] = peak
  const width = 1 / Math.sqrt(1 / (tau * tau) + study.total * (spread[peak] ?? 0))
  const stride = Math.max(1, Math.floor(Math.min(stepOverWidth * width, longestStep) / step))
  let sum = (likelihood[peak] ?? 0) * (values[Math.abs(peak - node)] ?? 0)
  const least = 1e-16 * sum
  const last = Math.min(size - 1, node + reach)
  for (let t = peak + stride; t <= last; t += stride) {
    const more = (likelihood[t] ?? 0) * (values[Math.abs(t - node)] ?? 0)
    sum += more
    if (more < least) break
  }
  const first = Math.max(0, node - reach)
  for (let t = peak - stride; t >= first; t -= stride) {
    const more = (likelihood[t] ?? 0) * (values[Math.abs(t - node)] ?? 0)
    sum += more
    if (more < least) break
  }
  return (sum * stride * step) / (tau * rootTwoPi)
}

/** The integrand is log-concave: from anywhere, uphill leads to its one highest node. */
function climb(log: Float64Array, perNode: number, node: number, start: number): number {
  let at = start
  let here = (log[at] ?? 0) - perNode * (at - node) * (at - node)
  for (let way = 1; way >= -1; way -= 2) {
    for (let next = at + way; next >= 0 && next < log.length; next += way) {
      const height = (log[next] ?? 0) - perNode * (next - node) * (next - node)
      if (height <= here) break
      at = next
      here = height
    }
  }
  return at
}
