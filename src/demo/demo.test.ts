import { describe, expect, it } from 'vitest'
import { readEntry } from '#core/journal/accept.ts'
import { fold } from '#core/journal/fold.ts'
import { JournalReader } from '#core/journal/journal-file.ts'
import { registersOf } from '#core/register/register.ts'
import { demoCases, demoFile } from './index.ts'
import { liveCharts } from './living/index.ts'
import { practiceChart } from './practice.ts'
import { methadoneRegister } from './register.ts'

describe.each(demoCases)('the invented case $name', ({ name, chart }) => {
  it('is made of entries that are read at the door', () => {
    for (const entry of [...practiceChart().entries, ...chart().entries]) {
      expect(readEntry(entry), `${entry.kind} ${JSON.stringify(entry.body)}`).toMatchObject({ kind: 'answer' })
    }
  })

  it('folds without conflict, pending target or unknown kind', () => {
    const theCase = fold(chart().entries)
    expect(theCase.conflicts).toEqual([])
    expect(theCase.pending).toEqual([])
    expect(theCase.unknown).toEqual([])
  })

  it('has every planned line worked out by the engine and checked by a second person', () => {
    const theCase = fold(chart().entries)
    const lines = theCase.live('planned-line')
    expect(lines.length).toBeGreaterThan(7)
    expect(new Set(theCase.latest('second-check')?.body.of)).toEqual(new Set(lines.map((line) => line.header.id)))
  })

  it('has the same bytes every time and verifies', () => {
    const text = demoFile([name])
    expect(demoFile([name])).toBe(text)
    const reader = new JournalReader()
    for (const line of text.trimEnd().split('\n')) reader.line(line)
    reader.finish()
  })
})

const finished = demoCases.map(({ chart }) => chart())
describe.each([
  ['the finished cases', finished, '2026-03-02', '11'],
  ['the finished and the living cases', [...finished, ...liveCharts('2026-03-10')], '2026-03-02', '5'],
  ['no case', [], '2025-05-01', '13'],
])('the invented register of %s', (_, charts, countedLast, balance) => {
  const chart = methadoneRegister(charts, countedLast)
  const theFold = fold([...charts, chart].flatMap(({ entries }) => entries))
  const [register, ...more] = registersOf(theFold, fold(practiceChart({ keepsRegister: true }).entries))

  it('is made of entries that are read at the door', () => {
    for (const entry of chart.entries) expect(readEntry(entry), entry.kind).toMatchObject({ kind: 'answer' })
  })

  it('agrees with what the cases gave and wasted, with its one difference explained', () => {
    expect(more).toEqual([])
    expect(register?.findings).toEqual([])
    expect(register?.balance.toFixed()).toBe(balance)
    expect(register?.lines.map(({ entry }) => entry.state)).toContain('superseded')
    expect(register?.lines.map(({ entry }) => entry.body.what)).toContain('lost')
  })
})
