import { answer, type Outcome, refuse } from '../outcome/outcome.ts'
import { exactP } from './exact-chances.ts'
import { logWays } from './log-ways.ts'
import { type Count, checkCount, type Interval, type NoCasesYet, wilsonInterval } from './proportion-interval.ts'
import { rootBetween } from './root-between.ts'

/** First share minus second, with its interval. */
export type Difference = { readonly difference: number; readonly interval: Interval }

/**
 * How far two shares are apart: Wilson's intervals of both joined (hybrid score; Newcombe, Stat Med 1998;17:873–890,
 * method 10, remembered). It never leaves −1 to 1.
 *
 * @example differenceOf({ events: 3, total: 20 }, { events: 9, total: 24 }) // −0.225, from −0.446 to 0.041
 */
export function differenceOf(first: Count, second: Count, confidence = 0.95): Outcome<Difference, NoCasesYet> {
  const [one, two] = [wilsonInterval(first, confidence), wilsonInterval(second, confidence)]
  if (one.kind === 'refusal' || two.kind === 'refusal') return refuse({ because: 'no-cases-yet' })
  const [a, b] = [first.events / first.total, second.events / second.total]
  const difference = a - b
  return answer({
    difference,
    interval: {
      low: difference - Math.hypot(a - one.answer.low, two.answer.high - b),
      high: difference + Math.hypot(one.answer.high - a, b - two.answer.low),
    },
  })
}

/** The conditional odds ratio and its exact interval; an end may be infinite. */
export type FisherAnswer = { readonly p: number; readonly oddsRatio: number; readonly interval: Interval }

/**
 * Whether two shares differ, given how many had it altogether (Fisher's exact test), and the conditional odds ratio with
 * its exact interval. Two-sided: every table at most as likely as this one.
 *
 * @example fisherExact({ events: 3, total: 20 }, { events: 9, total: 24 })
 * Reference: the conditional likelihood of the non-central hypergeometric distribution; interval by its tails.
 */
export function fisherExact(first: Count, second: Count, confidence = 0.95): Outcome<FisherAnswer, NoCasesYet> {
  checkCount(first)
  checkCount(second)
  if (first.total === 0 || second.total === 0) return refuse({ because: 'no-cases-yet' })
  const had = first.events + second.events
  const least = Math.max(0, had - second.total)
  const most = Math.min(had, first.total)
  const logs = Float64Array.from({ length: most - least + 1 }, (_, i) => {
    const events = least + i
    return logWays({ events, total: first.total }) + logWays({ events: had - events, total: second.total })
  })
  const observed = first.events - least
  const tail = (1 - confidence) / 2
  const at = (logOdds: number) => chancesAt(logs, logOdds)
  const reached = (logOdds: number) => exactP(at(logOdds), observed)
  // Beyond e^±60 no table of whole animals has any other chance than nought or one.
  const where = (value: (logOdds: number) => number) => Math.exp(rootBetween(value, -60, 60))
  const [lowest, highest] = [observed === 0, observed === most - least]
  return answer({
    p: reached(0).twoSided,
    oddsRatio: lowest ? (highest ? Number.NaN : 0) : highest ? Infinity : where((log) => meanOf(at(log)) - observed),
    interval: {
      low: lowest ? 0 : where((log) => reached(log).greater - tail),
      high: highest ? Infinity : where((log) => reached(log).less - tail),
    },
  })
}

/** The chances of all tables at these odds; the largest is taken out first, so that nothing overflows. */
function chancesAt(logs: Float64Array, logOdds: number): Float64Array {
  const raised = logs.map((log, i) => log + i * logOdds)
  const top = raised.reduce((most, log) => Math.max(most, log), -Infinity)
  const weights = raised.map((log) => Math.exp(log - top))
  const sum = weights.reduce((all, one) => all + one, 0)
  return weights.map((weight) => weight / sum)
}

function meanOf(chances: Float64Array): number {
  return chances.reduce((sum, chance, i) => sum + chance * i, 0)
}
