import { logWays } from '../log-ways.ts'
import { log1pExp, logit } from '../logistic.ts'
import { type Count, checkCount } from '../proportion-interval.ts'

/** Equally spaced log odds: the node t stands at from + t·step. */
export type Nodes = { readonly from: number; readonly step: number; readonly size: number }

/** What every study says of every node, so that no later sum needs an exponential. */
export type LikelihoodTable = Nodes & {
  /** p(1 − p) at every node: one case's information about its log odds. */
  readonly spread: Float64Array
  readonly studies: readonly StudyLikelihood[]
  /** ln of what was divided out: the ways to draw the events, and each study's own best fit. */
  readonly logScale: number
}

export type StudyLikelihood = {
  readonly total: number
  /** ln of the likelihood over its largest possible value, at most 0. */
  readonly log: Float64Array
  /** The same, not as a logarithm. */
  readonly likelihood: Float64Array
}

/**
 * The binomial likelihood of every study at every node, each divided by its largest value.
 *
 * @example tableOf([{ events: 23, total: 107 }], { from: -4, step: 0.04, size: 151 })
 */
export function tableOf(counts: readonly Count[], { from, step, size }: Nodes): LikelihoodTable {
  const cost = new Float64Array(size)
  const spread = new Float64Array(size)
  for (let t = 0; t < size; t += 1) {
    const at = from + t * step
    cost[t] = log1pExp(at)
    spread[t] = Math.exp(-Math.abs(at) - 2 * log1pExp(-Math.abs(at)))
  }
  let logScale = 0
  const studies = counts.map(({ events, total }) => {
    const top = bestFit({ events, total })
    logScale += top + logWays({ events, total })
    const log = new Float64Array(size)
    const likelihood = new Float64Array(size)
    for (let t = 0; t < size; t += 1) {
      const value = events * (from + t * step) - total * (cost[t] ?? 0) - top
      log[t] = value
      if (value > -740) likelihood[t] = Math.exp(value)
    }
    return { total, log, likelihood }
  })
  return { from, step, size, spread, studies, logScale }
}

/** ln of the likelihood at the observed share, without the number of ways. */
function bestFit(count: Count): number {
  checkCount(count)
  const { events, total } = count
  if (events === 0 || events === total) return 0
  const at = logit(events / total)
  return events * at - total * log1pExp(at)
}
