import { z } from 'zod'
import { survivalInEnglish as words } from '#content/wording/survival.ts'
import { fill } from '#core/outcome/finding.ts'
import { cumulativeIncidence, incidenceLimits } from '#core/stats/survival/cumulative-incidence.ts'
import { kaplanMeier, type SurvivalCurve } from '#core/stats/survival/kaplan-meier.ts'
import { type EndTimes, lifeTable } from '#core/stats/survival/life-table.ts'
import { logRank } from '#core/stats/survival/log-rank.ts'
import { restrictedMean } from '#core/stats/survival/restricted-mean.ts'
import { type Limits, limitScales, limitsAt } from '#core/stats/survival/survival-limits.ts'
import { survivalQuantile } from '#core/stats/survival/survival-quantile.ts'
import { listed, readInput } from '../input.ts'
import { followedRows } from './followed-rows.ts'

const request = z.strictObject({
  interval: listed(limitScales, 'scale of the interval').default('log-log'),
  competing: z.boolean().default(false),
  horizon: z.number().positive().optional(),
})

export type LowHigh = readonly [number, number] | null
export type SurvivalStep = {
  readonly time: number
  readonly atRisk: number
  readonly events: number
  readonly censored: number
  readonly survival: number
  readonly interval: LowHigh
}
export type SurvivalGroup = {
  readonly group: string
  readonly n: number
  readonly events: number
  readonly competing: number
  readonly median: { readonly value: number | null; readonly interval: readonly [number | null, number | null] }
  readonly rmean: { readonly horizon: number; readonly value: number; readonly error: number } | null
  readonly steps: readonly SurvivalStep[]
}
export type IncidenceGroup = {
  readonly group: string
  readonly variance: 'delta-method'
  readonly steps: readonly {
    readonly time: number
    readonly atRisk: number
    readonly event: number
    readonly interval: LowHigh
    readonly competing: number
  }[]
}
export type SurvivalAnswer = {
  readonly method: string
  readonly groups: readonly SurvivalGroup[]
  readonly logRank: { readonly chisq: number; readonly df: number; readonly p: number } | null
  readonly cumulativeIncidence?: readonly IncidenceGroup[]
  readonly notes: readonly { readonly code: string; readonly text: string }[]
}

/**
 * Time to the event from rows of `time, status[, group]`, in whatever order; they are read once and as they come.
 *
 * @example await survival(rows, { interval: 'log-log', competing: true })
 */
export async function survival(rows: AsyncIterable<unknown>, options: unknown): Promise<SurvivalAnswer> {
  const { interval, competing, horizon } = readInput(request, options)
  const { groups } = await followedRows(rows)
  const curves = [...groups].map(([group, ends]) => ({ group, curve: curveOf(ends) }))
  // One horizon for all groups, as far as every one of them is followed: otherwise their means say different things.
  const until = horizon ?? Math.min(...curves.map(({ curve }) => curve.table.time.at(-1) ?? 0))
  const notes: { code: string; text: string }[] = []
  const note = (code: keyof typeof words.notes, about: Readonly<Record<string, string>>) =>
    notes.push({ code, text: fill(words.notes[code], about) })
  const found = curves.map(({ group, curve }): SurvivalGroup => {
    const mean = restrictedMean(curve, until)
    const named = group === '' ? words.everybody : group
    if (mean.kind === 'refusal')
      note('mean-beyond', { horizon: String(until), group: named, last: String(mean.refusal.lastTime) })
    const events = sum(curve.table.events)
    if (events === 0 && interval === 'log-log') note('no-event', { group: named })
    const { value, low, high } = survivalQuantile(curve, 0.5, interval)
    return {
      group,
      n: curve.table.total,
      events,
      competing: sum(curve.table.competing),
      median: { value, interval: [low, high] },
      rmean: mean.kind === 'answer' ? { horizon: until, value: mean.answer.mean, error: mean.answer.error } : null,
      steps: stepsOf(curve, interval),
    }
  })
  const others = found.reduce((all, group) => all + group.competing, 0)
  if (others > 0 && !competing) note('other-ends-leave', { count: String(others) })
  const compared = found.length > 1 ? logRank([[...groups.values()]]) : null
  if (compared?.kind === 'refusal') note('not-compared', { why: words.whyNotCompared[compared.refusal.because] })
  return {
    method: fill(words.method, { scale: interval }),
    groups: found,
    logRank:
      compared?.kind === 'answer'
        ? { chisq: compared.answer.chiSquare, df: compared.answer.degrees, p: compared.answer.p }
        : null,
    ...(competing && { cumulativeIncidence: curves.map(incidenceOf) }),
    notes,
  }
}

function curveOf(ends: EndTimes): SurvivalCurve {
  const table = lifeTable(ends)
  // The rows were checked one by one, and a group without a row is none.
  if (table.kind === 'refusal') throw new Error(`A group cannot be counted: ${table.refusal.because}`)
  return kaplanMeier(table.answer)
}

function stepsOf(curve: SurvivalCurve, scale: (typeof limitScales)[number]): SurvivalStep[] {
  const { time, atRisk, events, competing, censored } = curve.table
  return Array.from(time, (at, line) => ({
    time: at,
    atRisk: atRisk[line] ?? 0,
    events: events[line] ?? 0,
    censored: (competing[line] ?? 0) + (censored[line] ?? 0),
    survival: curve.survival[line] ?? 0,
    interval: pairOf(limitsAt(curve, line, scale)),
  }))
}

function incidenceOf({ group, curve }: { readonly group: string; readonly curve: SurvivalCurve }): IncidenceGroup {
  const { table } = curve
  const found = cumulativeIncidence(table)
  return {
    group,
    variance: 'delta-method',
    steps: Array.from(table.time, (time, line) => {
      const event = found.event[line] ?? 0
      return {
        time,
        atRisk: table.atRisk[line] ?? 0,
        event,
        interval: pairOf(incidenceLimits(event, found.eventError[line] ?? 0)),
        competing: found.competing[line] ?? 0,
      }
    }),
  }
}

function pairOf({ low, high }: Limits): LowHigh {
  return low === null || high === null ? null : [low, high]
}

function sum(column: Float64Array): number {
  return column.reduce((all, one) => all + one, 0)
}
