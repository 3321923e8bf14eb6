import { answer, type Outcome, refuse } from '../../outcome/outcome.ts'
import { chiSquareAbove } from '../incomplete-gamma.ts'
import { solveLinear } from '../solve-linear.ts'
import {
  type EndTimes,
  type LifeTable,
  lastOfSame,
  lifeTable,
  type NobodyFollowed,
  type UnusableTime,
} from './life-table.ts'

/** `log-rank` weighs every event alike; `peto-peto` weighs by the share without the event just before, early ones more. */
export type LogRankWeights = 'log-rank' | 'peto-peto'

export type LogRank = {
  readonly total: readonly number[]
  readonly observed: readonly number[]
  readonly expected: readonly number[]
  /** The covariance of observed minus expected, row by row. */
  readonly variance: readonly (readonly number[])[]
  readonly chiSquare: number
  readonly degrees: number
  readonly p: number
}

export type NotComparable = UnusableTime | NobodyFollowed | { readonly because: 'fewer-than-two-groups' | 'no-spread' }

/** One stratum: the groups in the same order in each. A group with nobody in a stratum is left empty there. */
export type Stratum = readonly EndTimes[]

/**
 * Compares the times to the event of two or more groups (Mantel, Cancer Chemother Rep 1966;50:163–170; Peto & Peto, J R Stat Soc A
 * 1972;135:185–207), with the hypergeometric variance; with several strata the sums over them. Other ends count as leaving.
 *
 * @example logRank([[endTimesOf(withMass), endTimesOf(without)]])
 */
export function logRank(
  strata: readonly Stratum[],
  weights: LogRankWeights = 'log-rank',
): Outcome<LogRank, NotComparable> {
  const groups = strata[0]?.length ?? 0
  const sums = emptySums(groups)
  for (const stratum of strata) {
    const refused = addStratum(stratum, weights, sums)
    if (refused) return refuse(refused)
  }
  const used = sums.expected.flatMap((expected, group) => (expected > 0 ? [group] : []))
  if (used.length < 2) return refuse({ because: 'fewer-than-two-groups' })
  const kept = used.slice(0, -1)
  const over = kept.map((group) => (sums.observed[group] ?? 0) - (sums.expected[group] ?? 0))
  const part = solveLinear(
    kept.map((row) => kept.map((column) => sums.variance[row]?.[column] ?? 0)),
    over,
  )
  // Everybody with the event at one and the same time: observed and expected cannot differ.
  if (!part) return refuse({ because: 'no-spread' })
  const chiSquare = part.reduce((sum, value, i) => sum + value * (over[i] ?? 0), 0)
  return answer({ ...sums, chiSquare, degrees: kept.length, p: chiSquareAbove(chiSquare, kept.length) })
}

type Sums = { total: number[]; observed: number[]; expected: number[]; variance: number[][] }

function emptySums(groups: number): Sums {
  const zeros = () => new Array<number>(groups).fill(0)
  return { total: zeros(), observed: zeros(), expected: zeros(), variance: Array.from({ length: groups }, zeros) }
}

function addStratum(stratum: Stratum, weights: LogRankWeights, sums: Sums): UnusableTime | NobodyFollowed | null {
  const tables: (LifeTable | null)[] = []
  for (const ends of stratum) {
    const made = followedIn(ends) === 0 ? answer(null) : lifeTable(ends)
    if (made.kind === 'refusal') return made.refusal
    tables.push(made.answer)
  }
  const left = stratum.map(followedIn)
  let risk = left.reduce((sum, some) => sum + some, 0)
  if (risk === 0) return { because: 'nobody-followed' }
  left.forEach((total, group) => {
    sums.total[group] = (sums.total[group] ?? 0) + total
  })
  const next = tables.map(() => 0)
  const events = tables.map(() => 0)
  const leaving = tables.map(() => 0)
  let free = 1
  while (risk > 0) {
    const until = lastOfSame(Math.min(...tables.map((table, group) => table?.time[next[group] ?? 0] ?? Infinity)))
    let [deaths, gone] = [0, 0]
    tables.forEach((table, group) => {
      const line = next[group] ?? 0
      const isNow = table !== null && (table.time[line] ?? Infinity) <= until
      const here = isNow ? (table.events[line] ?? 0) : 0
      const others = isNow ? (table.competing[line] ?? 0) + (table.censored[line] ?? 0) : 0
      events[group] = here
      leaving[group] = here + others
      next[group] = line + (isNow ? 1 : 0)
      deaths += here
      gone += here + others
    })
    if (deaths > 0) addTime({ deaths, risk, weight: weights === 'peto-peto' ? free : 1 }, events, left, sums)
    free *= 1 - deaths / risk
    risk -= gone
    leaving.forEach((some, group) => {
      left[group] = (left[group] ?? 0) - some
    })
  }
  return null
}

function addTime(
  { deaths, risk, weight }: { readonly deaths: number; readonly risk: number; readonly weight: number },
  events: readonly number[],
  left: readonly number[],
  sums: Sums,
): void {
  // With one left the spread is nought, and nought over nought must not come in.
  const spread = risk > 1 ? (weight * weight * deaths * (risk - deaths)) / (risk - 1) : 0
  left.forEach((here, row) => {
    sums.observed[row] = (sums.observed[row] ?? 0) + weight * (events[row] ?? 0)
    sums.expected[row] = (sums.expected[row] ?? 0) + (weight * deaths * here) / risk
    const ofRow = sums.variance[row]
    if (!ofRow) return
    left.forEach((there, column) => {
      const own = row === column ? here / risk : 0
      ofRow[column] = (ofRow[column] ?? 0) + spread * (own - (here * there) / (risk * risk))
    })
  })
}

function followedIn({ events, competing, censored }: EndTimes): number {
  return events.length + competing.length + censored.length
}
