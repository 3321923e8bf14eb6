import { answer, type Outcome, refuse } from '../../outcome/outcome.ts'
import { chiSquareAbove } from '../incomplete-gamma.ts'
import { solveLinear } from '../solve-linear.ts'
import { type EndTimes, type LifeTable, lifeTable, type NobodyFollowed, type UnusableTime } from './life-table.ts'

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
  const joined = lifeTable({
    events: joinedOf(stratum.map(({ events }) => events)),
    competing: joinedOf(stratum.map(({ competing }) => competing)),
    censored: joinedOf(stratum.map(({ censored }) => censored)),
  })
  if (joined.kind === 'refusal') return joined.refusal
  const all = joined.answer
  const each = stratum.map((ends) => eventsAlong(ends, all))
  const left = each.map(({ total }) => total)
  left.forEach((total, group) => {
    sums.total[group] = (sums.total[group] ?? 0) + total
  })
  let free = 1
  for (let i = 0; i < all.time.length; i += 1) {
    const deaths = all.events[i] ?? 0
    const risk = all.atRisk[i] ?? 0
    if (deaths > 0) addTime({ deaths, risk, weight: weights === 'peto-peto' ? free : 1 }, i, each, left, sums)
    free *= 1 - deaths / risk
    each.forEach(({ leaving }, group) => {
      left[group] = (left[group] ?? 0) - (leaving[i] ?? 0)
    })
  }
  return null
}

function addTime(
  { deaths, risk, weight }: { readonly deaths: number; readonly risk: number; readonly weight: number },
  line: number,
  each: readonly { readonly events: Float64Array }[],
  left: readonly number[],
  sums: Sums,
): void {
  // With one left the spread is nought, and nought over nought must not come in.
  const spread = risk > 1 ? (weight * weight * deaths * (risk - deaths)) / (risk - 1) : 0
  left.forEach((here, row) => {
    sums.observed[row] = (sums.observed[row] ?? 0) + weight * (each[row]?.events[line] ?? 0)
    sums.expected[row] = (sums.expected[row] ?? 0) + (weight * deaths * here) / risk
    const ofRow = sums.variance[row]
    if (!ofRow) return
    left.forEach((there, column) => {
      const own = row === column ? here / risk : 0
      ofRow[column] = (ofRow[column] ?? 0) + spread * (own - (here * there) / (risk * risk))
    })
  })
}

function joinedOf(columns: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(columns.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const column of columns) {
    all.set(column, at)
    at += column.length
  }
  return all
}

/** Events and leavings of one group at the lines of the joined table. */
function eventsAlong(
  ends: EndTimes,
  all: LifeTable,
): { readonly total: number; readonly events: Float64Array; readonly leaving: Float64Array } {
  const events = new Float64Array(all.time.length)
  const leaving = new Float64Array(all.time.length)
  const place = (column: Float64Array, isEvent: boolean) => {
    let line = 0
    for (const time of Float64Array.from(column).sort()) {
      while (line + 1 < all.time.length && (all.time[line + 1] ?? Infinity) <= time) line += 1
      leaving[line] = (leaving[line] ?? 0) + 1
      if (isEvent) events[line] = (events[line] ?? 0) + 1
    }
  }
  place(ends.events, true)
  place(ends.competing, false)
  place(ends.censored, false)
  return { total: ends.events.length + ends.competing.length + ends.censored.length, events, leaving }
}
