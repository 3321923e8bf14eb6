import { answer, type Outcome, refuse } from '../../outcome/outcome.ts'

/** How long one was followed, and how it ended: 0 nothing yet (censored), 1 the event, 2 another end that rules it out. */
export type Followed = { readonly time: number; readonly status: 0 | 1 | 2 }

export type UnusableTime = { readonly because: 'time-not-usable'; readonly time: number }
export type NobodyFollowed = { readonly because: 'nobody-followed' }

/** Times of one group by how they ended; any order, any unit, none below zero. */
export type EndTimes = {
  readonly events: Float64Array
  readonly competing: Float64Array
  readonly censored: Float64Array
}

/** One line for every distinct time at which somebody left, the earliest first; the columns are of one length. */
export type LifeTable = {
  readonly total: number
  readonly time: Float64Array
  /** Still followed just before that time; who leaves at it counts as followed. */
  readonly atRisk: Float64Array
  readonly events: Float64Array
  readonly competing: Float64Array
  readonly censored: Float64Array
}

/** Times closer than this, relative to their size, are one: 0.1 + 0.2 and 0.3 differ by rounding only. */
const sameWithin = 1e-8

/** The latest time that is still the same as this one. */
export function lastOfSame(time: number): number {
  return time + Math.abs(time) * sameWithin
}

/** Rows as columns; nothing is sorted yet. */
export function endTimesOf(rows: readonly Followed[]): EndTimes {
  const of = (status: Followed['status']) =>
    Float64Array.from(
      rows.filter((row) => row.status === status),
      timeOf,
    )
  return { events: of(1), competing: of(2), censored: of(0) }
}

function timeOf({ time }: Followed): number {
  return time
}

/**
 * Counts who was followed until when. Times that differ by rounding only are merged; the first of them is kept.
 *
 * @example lifeTable(endTimesOf([{ time: 3, status: 1 }, { time: 5, status: 0 }])) // at risk 2, 1
 * Reference: Klein & Moeschberger, Survival Analysis, 2nd ed. 2003, chapter 4 (remembered).
 */
export function lifeTable(ends: EndTimes): Outcome<LifeTable, UnusableTime | NobodyFollowed> {
  const columns = [ends.events, ends.competing, ends.censored].map((column) => Float64Array.from(column).sort())
  const total = columns.reduce((sum, { length }) => sum + length, 0)
  if (total === 0) return refuse({ because: 'nobody-followed' })
  for (const column of columns) {
    // Sorted: what is below zero stands first, what is no number and what is endless stand last.
    const wrong = [column[0], column.at(-1)].find((time) => time !== undefined && !(time >= 0 && time < Infinity))
    if (wrong !== undefined) return refuse({ because: 'time-not-usable', time: wrong })
  }
  return answer(merged(columns, total))
}

function merged(columns: readonly Float64Array[], total: number): LifeTable {
  const made = Array.from({ length: 5 }, () => new Float64Array(total))
  const [time, atRisk, ...counts] = made as [Float64Array, Float64Array, ...Float64Array[]]
  const next = columns.map(() => 0)
  let lines = 0
  let left = total
  while (left > 0) {
    const now = Math.min(...columns.map((column, i) => column[next[i] ?? 0] ?? Infinity))
    const limit = lastOfSame(now)
    time[lines] = now
    atRisk[lines] = left
    columns.forEach((column, i) => {
      let at = next[i] ?? 0
      const from = at
      while (at < column.length && (column[at] ?? Infinity) <= limit) at += 1
      next[i] = at
      const count = counts[i]
      if (count) count[lines] = at - from
      left -= at - from
    })
    lines += 1
  }
  const cut = (column: Float64Array | undefined) => (column ?? new Float64Array(0)).slice(0, lines)
  return {
    total,
    time: cut(time),
    atRisk: cut(atRisk),
    events: cut(counts[0]),
    competing: cut(counts[1]),
    censored: cut(counts[2]),
  }
}

/** The last line at or before a time; -1 before the first. */
export function lineAt({ time }: Pick<LifeTable, 'time'>, moment: number): number {
  let low = 0
  let high = time.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if ((time[middle] ?? Infinity) <= lastOfSame(moment)) low = middle + 1
    else high = middle
  }
  return low - 1
}
