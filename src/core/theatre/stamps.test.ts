import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { doneAt, retractionsOf } from './stamps.ts'

describe('two stamps of one thing, from two tablets without the network', () => {
  const make = entryMaker()
  const operation = 'operation-1'
  const stamp = (checkpoint: string, at: string, more = {}) =>
    make({
      kind: 'theatre-stamp',
      subject: { kind: 'operation', animal: 'animal-1', operation },
      body: { checkpoint, answer: 'done', detail: {}, text: null },
      happenedAt: { at: `2026-03-02T${at}:00.000Z`, zone: 'Europe/London', precision: 'second', by: 'person' },
      ...more,
    })

  it('stand side by side, and the earlier one counts until a person settles them', () => {
    const first = stamp('incision', '10:00')
    const second = stamp('incision', '10:04')
    for (const entries of [
      [first, second],
      [second, first],
    ]) {
      expect(fold(entries).conflicts).toHaveLength(1)
      expect(doneAt(fold(entries), operation, 'incision')).toBe('2026-03-02T10:00:00.000Z')
    }
    const settled = stamp('incision', '10:04', { supersedes: [first.id, second.id], reason: 'The later one is true.' })
    expect(doneAt(fold([first, second, settled]), operation, 'incision')).toBe('2026-03-02T10:04:00.000Z')
  })

  it('say so of a retraction too, of its beginning and of its end', () => {
    const stamps = [
      stamp('retraction-on-1', '11:00'),
      stamp('retraction-on-1', '11:01'),
      stamp('retraction-off-1', '11:05'),
      stamp('retraction-off-1', '11:07'),
    ]
    expect(retractionsOf(fold(stamps), operation)).toEqual([
      { number: 1, from: '2026-03-02T11:00:00.000Z', until: '2026-03-02T11:05:00.000Z' },
    ])
    expect(fold(stamps).conflicts).toHaveLength(2)
  })
})
