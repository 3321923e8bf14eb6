import { type Count, checkCount } from '../proportion-interval.ts'
import { rootTwoPi } from '../special-functions.ts'
import { type Column, columnsOf } from './columns.ts'
import { normalised } from './grid-distribution.ts'
import { type LikelihoodTable, tableOf } from './likelihood-table.ts'
import { farSpreads, planOf } from './plan.ts'
import { type Priors, usualPriors } from './priors.ts'
import type { ShareDistribution } from './share-distribution.ts'
import { kernelOf } from './study-marginal.ts'

/** What published counts let a new clinic expect, with what it was computed from. */
export type Predictive = {
  readonly studies: readonly Count[]
  readonly priors: Priors
  /** The share of a new clinic. */
  readonly distribution: ShareDistribution
  /** The posterior of mu and tau; node t stands at log odds nodes.from + t · nodes.step. */
  readonly posterior: {
    readonly nodes: { readonly from: number; readonly step: number; readonly size: number }
    readonly tau: { readonly unit: number; readonly step: number }
    readonly columns: readonly Column[]
  }
  /** ln of the probability of these counts before they were seen. */
  readonly logMarginalLikelihood: number
  /** The mass that the grid held before it was scaled to 1: the distance from 1 is its error. */
  readonly mass: number
}

/**
 * The meta-analytic-predictive distribution (Neuenschwander et al., Clin Trials 2010;7:5–18; Schmidli et al., Biometrics
 * 2014;70:1023–1032): events ~ Bin(total, expit θ), θ ~ N(mu, tau²), mu normal, tau half-normal; the share of a new
 * clinic is expit θ_new. By deterministic quadrature: no chance, the same answer every time.
 *
 * @param studies none, one or many; a study without cases says nothing and changes nothing.
 * @param finer 2 halves every step: the check that the steps are fine enough.
 * @example summaryOf(predictiveOf([{ events: 23, total: 107 }, { events: 12, total: 44 }]).distribution).mean
 */
export function predictiveOf(studies: readonly Count[], priors: Priors = usualPriors, finer = 1): Predictive {
  studies.forEach(checkCount)
  checkPriors(priors)
  const counted = studies.filter(({ total }) => total > 0)
  const plan = planOf(counted, priors, finer)
  const table = tableOf(counted, plan.nodes)
  const { columns, logTotal } = columnsOf(table, plan, priors)
  const { distribution, mass } = normalised(table.from, table.step, mixed(table, columns))
  // Only very many huge and almost equal studies can outrun the grid; then no answer is better than a wrong one.
  if (Math.abs(mass - 1) > 1e-6)
    throw new Error(`The grid holds ${mass} of the whole: these studies are too sharp for it.`)
  return {
    studies: counted,
    priors,
    distribution: { grid: distribution, weak: null },
    posterior: { nodes: plan.nodes, tau: plan.tau, columns },
    logMarginalLikelihood: logTotal + table.logScale,
    mass,
  }
}

/** Every column's mu spread by its tau, added up on the table's nodes. */
function mixed(table: LikelihoodTable, columns: readonly Column[]): Float64Array {
  const heights = new Float64Array(table.size)
  for (const { tau, first, stride, weights } of columns) {
    if (tau === 0) {
      for (let i = 0; i < weights.length; i += 1) {
        heights[first + i] = (heights[first + i] ?? 0) + (weights[i] ?? 0) / table.step
      }
      continue
    }
    const { values } = kernelOf(tau, table)
    const reach = Math.min(values.length - 1, Math.ceil((farSpreads * tau) / table.step))
    for (let i = 0; i < weights.length; i += 1) {
      const node = first + i * stride
      const height = (weights[i] ?? 0) / (tau * rootTwoPi)
      const last = Math.min(table.size - 1, node + reach)
      for (let t = Math.max(0, node - reach); t <= last; t += 1) {
        heights[t] = (heights[t] ?? 0) + height * (values[Math.abs(t - node)] ?? 0)
      }
    }
  }
  return heights
}

function checkPriors({ mu, tauScale }: Priors): void {
  if (!(Number.isFinite(mu.mean) && mu.sd > 0 && mu.sd < 1e3 && tauScale > 0 && tauScale < 1e3)) {
    throw new Error(`A prior needs a spread above 0: mu ${mu.mean} ± ${mu.sd}, tau ${tauScale}.`)
  }
}
