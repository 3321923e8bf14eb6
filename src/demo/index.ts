import { sealAll } from '#core/journal/chain.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type JournalLine, JournalWriter } from '#core/journal/journal-file.ts'
import { moss } from './cat.ts'
import type { Chart } from './chart.ts'
import { demoClinic, practiceChart, registerRows } from './practice.ts'
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
export { demoClinic }
export type DemoName = (typeof demoCases)[number]['name']

/** The journal file of invented cases: registers, the practice's own stream, then the cases in order of writing. */
export function demoFile(names: readonly DemoName[]): string {
  const charts: Chart[] = [
    practiceChart(),
    ...demoCases.filter((one) => names.includes(one.name)).map((one) => one.chart()),
  ]
  const entries = charts.flatMap((chart) => chart.entries).sort(byWriting)
  const lines: JournalLine[] = [
    { type: 'quiet-ear', format: 1, clinic: demoClinic },
    ...registerRows().map((row) => ({ type: 'row' as const, ...row })),
    ...sealAll(entries, (entry) => entry.writtenAt).map((stored) => ({ type: 'entry' as const, ...stored })),
  ]
  const writer = new JournalWriter()
  return lines.map((line) => writer.line(line)).join('') + writer.end()
}

function byWriting(a: Entry, b: Entry): number {
  if (a.writtenAt !== b.writtenAt) return a.writtenAt < b.writtenAt ? -1 : 1
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0
}
