import { sealAll } from '#core/journal/chain.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type JournalLine, JournalWriter, type Row, rowsInOrder } from '#core/journal/journal-file.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { moss } from './cat.ts'
import type { Chart } from './chart.ts'
import { lookAtFigures } from './figures-looked-at.ts'
import { Days } from './living/days.ts'
import { type LivingName, liveCharts, livingCases } from './living/index.ts'
import { livingRows } from './living/people.ts'
import { demoClinic, practiceChart, registerRows, zone } from './practice.ts'
import { methadoneRegister } from './register.ts'
import { tansy } from './spaniel.ts'

/** The invented cases by name. */
export const demoCases = [
  {
    name: 'spaniel',
    title: 'Tansy, a springer spaniel: left ear, from the referral call to twelve months',
    chart: tansy,
  },
  { name: 'cat', title: 'Moss, an old cat: a tumour in the right ear, and a death of another cause', chart: moss },
] as const
export { demoClinic, livingCases }
export type DemoName = (typeof demoCases)[number]['name']

/** The journal file of invented cases: registers, the practice's own stream, then the cases in order of writing. */
export function demoFile(names: readonly DemoName[]): string {
  const cases = demoCases.filter((one) => names.includes(one.name)).map((one) => one.chart())
  return fileOf([practiceChart(), ...cases], registerRows())
}

/**
 * The invented practice as it is opened: the finished cases, and those in the middle of their course on that day.
 *
 * @example practiceFile('2026-03-10')
 */
export function practiceFile(today: string): string {
  return openFile([...demoCases.map((one) => one.chart()), ...liveCharts(today)], today)
}

/** One case in the middle of its course on that day, with the practice around it. */
export function livingFile(name: LivingName, today: string): string {
  return openFile(liveCharts(today, name), today)
}

/** A practice that is open keeps a register, counted it in the week before last, and looked at its figures before that. */
function openFile(cases: readonly Chart[], today: string): string {
  const days = new Days(today)
  const register = methadoneRegister(cases, days.openAgo(9))
  const rows = rowsInOrder([...registerRows(), ...livingRows(today)])
  const practice = practiceChart({ keepsRegister: true })
  lookAtFigures(practice, cases, rows, days.openAgo(16))
  return fileOf([practice, register, ...cases], rows)
}

/** The day on the wall of the invented practice. */
export function dayInPractice(now: string): string {
  return dayOf({ at: now, zone })
}

function fileOf(charts: readonly Chart[], rows: readonly Row[]): string {
  const entries = charts.flatMap((chart) => chart.entries).sort(byWriting)
  const lines: JournalLine[] = [
    { type: 'quiet-ear', format: 1, clinic: demoClinic },
    ...rows.map((row) => ({ type: 'row' as const, ...row })),
    ...sealAll(entries, (entry) => entry.writtenAt).map((stored) => ({ type: 'entry' as const, ...stored })),
  ]
  const writer = new JournalWriter()
  return lines.map((line) => writer.line(line)).join('') + writer.end()
}

function byWriting(a: Entry, b: Entry): number {
  return compareText(a.writtenAt, b.writtenAt) || compareText(a.id, b.id)
}
