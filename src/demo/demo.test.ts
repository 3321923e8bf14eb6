import { describe, expect, it } from 'vitest'
import { readEntry } from '#core/journal/accept.ts'
import { fold } from '#core/journal/fold.ts'
import { JournalReader } from '#core/journal/journal-file.ts'
import { demoCases, demoFile } from './index.ts'
import { practiceChart } from './practice.ts'

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
