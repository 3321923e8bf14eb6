import { rootTwoPi } from '../special-functions.ts'
import type { LikelihoodTable } from './likelihood-table.ts'
import { negligible, type Plan } from './plan.ts'
import type { Priors } from './priors.ts'
import { type Kernel, kernelOf, studyMarginal } from './study-marginal.ts'

/** The posterior of mu for one tau: weights on table nodes first, first + stride, … */
export type Column = {
  /** Its place in the uniform walk behind tau; 0 is no spread at all. */
  readonly index: number
  readonly tau: number
  readonly first: number
  readonly stride: number
  /** Posterior mass of each node; over all columns they sum to 1. */
  readonly weights: Float64Array
}

type RawColumn = Column & { readonly peak: number }

/**
 * The joint posterior of mu and tau, column by column from the likeliest tau outwards.
 *
 * @returns the columns, likeliest outwards, and ln of the integral over mu and tau (scaled as the table is).
 */
export function columnsOf(
  table: LikelihoodTable,
  plan: Plan,
  priors: Priors,
): { readonly columns: readonly Column[]; readonly logTotal: number } {
  const raw: RawColumn[] = []
  let best = Number.NEGATIVE_INFINITY
  const walk = (from: number, way: 1 | -1) => {
    for (let index = from; index >= 0 && index <= plan.tau.last; index += way) {
      const column = columnAt(index, table, plan, priors)
      if (column.peak < best - negligible && Math.abs(index - plan.tau.likeliest) > 3) return
      best = Math.max(best, column.peak)
      raw.push(column)
    }
  }
  walk(plan.tau.likeliest, 1)
  walk(plan.tau.likeliest - 1, -1)
  let total = 0
  for (const { weights } of raw) {
    for (let i = 0; i < weights.length; i += 1) {
      const value = Math.exp((weights[i] ?? 0) - best)
      weights[i] = value
      total += value
    }
  }
  if (!(total > 0 && Number.isFinite(total))) throw new Error('The posterior of these studies could not be summed.')
  for (const { first, stride, weights } of raw) {
    for (let i = 0; i < weights.length; i += 1) weights[i] = (weights[i] ?? 0) / total
    const cut = first < stride || first + weights.length * stride >= table.size
    if (cut && Math.max(weights[0] ?? 0, weights[weights.length - 1] ?? 0) > 1e-9) {
      throw new Error('The posterior of these studies reaches beyond its grid.')
    }
  }
  return { columns: raw, logTotal: best + Math.log(total) }
}

/** One column, its weights still as logarithms. */
function columnAt(index: number, table: LikelihoodTable, plan: Plan, priors: Priors): RawColumn {
  const { unit, step: tauStep } = plan.tau
  const tau = unit * Math.sinh(index * tauStep)
  const { mean, sd } = plan.rough.muGiven(tau)
  const width = tau === 0 ? 0 : 1 / Math.sqrt(1 / (sd * sd) + 1 / (tau * tau))
  const stride = Math.max(1, Math.floor(Math.min(0.7 * width, Math.max(0.35, 0.5 * tau)) / table.step))
  const logTauWeight =
    Math.log(unit * Math.cosh(index * tauStep) * tauStep * (index === 0 ? 0.5 : 1)) +
    Math.log(2 / rootTwoPi) -
    Math.log(priors.tauScale) -
    0.5 * (tau / priors.tauScale) ** 2
  const same = logTauWeight + Math.log(stride * table.step) - Math.log(priors.mu.sd) - Math.log(rootTwoPi)
  const evidence = evidenceOf(table, tau === 0 ? undefined : kernelOf(tau, table))
  const logAt = (node: number) => {
    const apart = (table.from + node * table.step - priors.mu.mean) / priors.mu.sd
    return same - 0.5 * apart * apart + evidence(node)
  }
  const start = Math.round((mean - table.from) / table.step)
  let peak = logAt(start)
  const above = outwards(start, stride)
  const below = outwards(start, -stride).reverse()
  return {
    index,
    tau,
    stride,
    first: start - below.length * stride,
    peak,
    weights: Float64Array.from([...below, logAt(start), ...above]),
  }

  /** The posterior of mu is log-concave: once far below its peak it stays there. */
  function outwards(from: number, pace: number): number[] {
    const found: number[] = []
    for (let node = from + pace; node >= 0 && node < table.size; node += pace) {
      const value = logAt(node)
      if (value < peak - negligible) break
      peak = Math.max(peak, value)
      found.push(value)
    }
    return found
  }
}

/** ln of the studies' likelihood at mu = a node; without a spread the studies share one log odds. */
function evidenceOf(table: LikelihoodTable, kernel: Kernel | undefined): (node: number) => number {
  if (!kernel) {
    return (node) => {
      let sum = 0
      for (const study of table.studies) sum += study.log[node] ?? Number.NEGATIVE_INFINITY
      return sum
    }
  }
  const highest = new Int32Array(table.studies.length).fill(-1)
  return (node) => {
    let product = 1
    let sum = 0
    for (let index = 0; index < highest.length; index += 1) {
      if (highest[index] === -1) highest[index] = node
      product *= studyMarginal(index, table, kernel, node, highest)
      if (product < 1e-200) {
        sum += Math.log(product)
        product = 1
      }
    }
    return sum + Math.log(product)
  }
}
