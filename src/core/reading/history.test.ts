import { describe, expect, it } from 'vitest'
import { refile } from '#core/journal/correct.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { badgesOf } from './badges-of.ts'
import { historyOf } from './history-of.ts'

const make = entryMaker()
const first = make({ kind: 'weight', at: '2026-02-01T09:00:00.000Z' })
const second = make({
  kind: 'weight',
  at: '2026-02-01T09:00:00.000Z',
  supersedes: [first.id],
  reason: 'Digits swapped.',
})
const third = make({ kind: 'weight', at: '2026-02-01T09:00:00.000Z', supersedes: [first.id], reason: 'Read again.' })

describe('the history of an entry', () => {
  it('tells the first, its corrections and their settlement, whichever of them one opens', () => {
    const settled = make({ kind: 'weight', supersedes: [second.id, third.id], reason: 'Weighed again.' })
    const theCase = fold([settled, third, first, second])
    for (const { id } of [first, second, third, settled]) {
      const steps = historyOf(theCase, id)
      expect(steps.map(({ line }) => line.header.id)).toEqual([first.id, second.id, third.id, settled.id])
      expect(steps.map(({ is }) => is)).toEqual(['first', 'correction', 'correction', 'settlement'])
    }
  })

  it('tells what was taken back, and by what', () => {
    const withdrawn = make({ kind: 'withdrawal', withdraws: first.id, reason: 'Other dog.' })
    const theCase = fold([first, withdrawn])
    expect(historyOf(theCase, first.id).map(({ is }) => is)).toEqual(['first', 'withdrawal'])
  })

  it('tells that it was filed to another animal', () => {
    const ids = [make({ kind: 'note' }).id, make({ kind: 'note' }).id] as const
    const to = { stream: 'case:0002', subject: { kind: 'animal', animal: 'animal-2' } } as const
    const [, leaving] = refile(first, to, 'Other dog.', ids, first)
    expect(historyOf(fold([first, leaving]), first.id).map(({ is }) => is)).toEqual(['first', 'refiling'])
  })

  it('holds nothing of other entries', () => {
    expect(historyOf(fold([first, make({ kind: 'weight' })]), first.id)).toHaveLength(1)
  })
})

describe('what is said beside an entry', () => {
  it('is that it lies only here, that it waits, or that it stands against another', () => {
    const theCase = fold([first, second, third])
    const badges = (id: string) => {
      const line = theCase.line(id)
      if (!line) throw new Error(id)
      return badgesOf(line, theCase, new Set([second.id]))
    }
    expect(badges(first.id)).toContain('superseded')
    expect(badges(second.id)).toEqual(expect.arrayContaining(['unsent', 'conflict', 'corrects']))
    expect(badges(third.id)).not.toContain('unsent')
  })

  it('is that its order is uncertain when no clock was measured', () => {
    const unmeasured = make({ kind: 'note', device: { ...first.device, offset: null } })
    const clocked = { ...unmeasured, happenedAt: { ...unmeasured.happenedAt, by: 'clock' as const } }
    const theCase = fold([clocked])
    const [line] = theCase.lines
    expect(line && badgesOf(line, theCase, new Set())).toEqual(['order-uncertain'])
  })

  it('is that its target has not arrived', () => {
    const early = make({ kind: 'note', supersedes: ['0190a7c2-00ff-7000-8000-0000000000ff'], reason: 'Corrected.' })
    const theCase = fold([early])
    const [line] = theCase.lines
    expect(line && badgesOf(line, theCase, new Set())).toContain('waits')
  })
})
