import type { LowHigh, SurvivalAnswer, SurvivalGroup } from '#actions/survival/survival.ts'
import { survivalInEnglish as words } from '#content/wording/survival.ts'
import { fill } from '#core/outcome/finding.ts'
import { table } from './table.ts'

/** Times shown to a person; the rest is in the JSON. */
const shown = 40

/** The table for people at a terminal. */
export function survivalText(answer: SurvivalAnswer): string {
  const { logRank } = answer
  const compared = logRank
    ? [
        fill(words.compared, {
          chisq: rounded(logRank.chisq),
          df: String(logRank.df),
          p: logRank.p < 0.0001 ? logRank.p.toExponential(1) : rounded(logRank.p),
        }),
      ]
    : []
  const incidence = (answer.cumulativeIncidence ?? []).map(({ group, steps }) => {
    const rows = steps.filter(({ event }, i) => event !== (steps[i - 1]?.event ?? 0))
    const { columns } = words
    const header = [columns.time, columns.atRisk, columns.event, columns.interval, columns.competing]
    const cells = rows
      .slice(0, shown)
      .map((step) => [
        String(step.time),
        String(step.atRisk),
        rounded(step.event),
        range(step.interval),
        rounded(step.competing),
      ])
    return `${nameOf(group)}: ${words.incidence}\n${table(header, cells)}${moreThan(rows.length)}`
  })
  const lines = [...compared, ...answer.notes.map(({ text }) => text), answer.method]
  return [...answer.groups.map(groupText), ...incidence, `${lines.join('\n')}\n`].join('\n')
}

function groupText({ group, n, events, competing, median, rmean, steps }: SurvivalGroup): string {
  const [low, high] = median.interval
  const said = [
    fill(words.counted, { n: String(n), events: String(events) }),
    ...(competing > 0 ? [fill(words.otherEnds, { count: String(competing) })] : []),
    fill(words.median, {
      value: median.value === null ? words.notReached : rounded(median.value),
      low: low === null ? words.unknownEnd : rounded(low),
      high: high === null ? words.unknownEnd : rounded(high),
    }),
    ...(rmean
      ? [
          fill(words.mean, {
            horizon: rounded(rmean.horizon),
            value: rounded(rmean.value),
            error: rounded(rmean.error),
          }),
        ]
      : []),
  ]
  const { columns } = words
  const header = [columns.time, columns.atRisk, columns.events, columns.censored, columns.survival, columns.interval]
  const rows = steps
    .slice(0, shown)
    .map((step) => [
      String(step.time),
      String(step.atRisk),
      String(step.events),
      String(step.censored),
      rounded(step.survival),
      range(step.interval),
    ])
  return `${nameOf(group)}: ${said.join('; ')}\n${table(header, rows)}${moreThan(steps.length)}`
}

function nameOf(group: string): string {
  return group === '' ? words.everybody : fill(words.group, { group })
}

function moreThan(count: number): string {
  return count > shown ? `${fill(words.more, { count: String(count - shown) })}\n` : ''
}

function range(interval: LowHigh): string {
  return interval === null ? '–' : `${rounded(interval[0])}–${rounded(interval[1])}`
}

function rounded(value: number): string {
  return String(Number(value.toPrecision(4)))
}
