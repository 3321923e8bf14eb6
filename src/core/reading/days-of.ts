import type { Line } from '#core/journal/fold.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'

/** Entries that follow each other and are of one kind, or one entry by itself. */
export type Run = { readonly kind: string; readonly lines: readonly Line[] }
export type DayOfLines = { readonly day: string; readonly said: string; readonly runs: readonly Run[] }

/** Fewer of one kind in a row are shown one by one. */
const leastOfARun = 4

/**
 * Entries by the day they happened, oldest day first, each day in the order of the case. Many of one kind in a row (the
 * items of a spoken pause) make a run, so that a page of a long operation can be read at a glance.
 *
 * @example daysOf(lines).map(({ said }) => said) // ['24 February 2025', '11 March 2025']
 */
export function daysOf(lines: readonly Line[]): DayOfLines[] {
  const days = new Map<string, Line[]>()
  for (const line of lines) {
    const { happenedAt } = line.header
    const coarse = happenedAt.precision === 'year' || happenedAt.precision === 'month'
    const said = sayMoment(coarse ? happenedAt : { ...happenedAt, precision: 'day' })
    const group = days.get(said)
    if (group) group.push(line)
    else days.set(said, [line])
  }
  return [...days].map(([said, group]) => ({
    day: dayOf(group[0]?.header.happenedAt ?? { at: '', zone: 'UTC' }),
    said,
    runs: runsOf(group),
  }))
}

function runsOf(lines: readonly Line[]): Run[] {
  const runs: { kind: string; lines: Line[] }[] = []
  for (const line of lines) {
    const last = runs.at(-1)
    if (last?.kind === line.header.kind) last.lines.push(line)
    else runs.push({ kind: line.header.kind, lines: [line] })
  }
  return runs.flatMap((run) =>
    run.lines.length >= leastOfARun ? [run] : run.lines.map((line) => ({ kind: run.kind, lines: [line] })),
  )
}
