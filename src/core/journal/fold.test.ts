import { describe, expect, it } from 'vitest'
import { readEntry } from './accept.ts'
import { seal } from './chain.ts'
import { refile } from './correct.ts'
import { entryMaker, testId } from './entries-for-tests.ts'
import type { Entry } from './entry.ts'
import { fold } from './fold.ts'

const words = (text: string) => ({ kind: 'note', body: { text } }) as const
const because = { reason: 'Typed in the wrong line.' }

describe('folding entries into a case', () => {
  it('shows a correction and keeps the old words in the history', () => {
    const make = entryMaker()
    const wrong = make(words('Left ear'))
    const right = make({ ...words('Right ear'), supersedes: [wrong.id], ...because })
    const theCase = fold([wrong, right])
    expect(theCase.live('note').map((line) => line.body.text)).toEqual(['Right ear'])
    expect(theCase.line(wrong.id)).toMatchObject({
      state: 'superseded',
      body: { text: 'Left ear' },
      supersededBy: [right.id],
    })
    expect(theCase.conflicts).toEqual([])
  })

  it('takes a withdrawn entry out, and brings it back when the withdrawal is itself withdrawn', () => {
    const make = entryMaker()
    const entry = make(words('Seen by the owner'))
    const gone = make({ kind: 'withdrawal', withdraws: entry.id, ...because })
    const back = make({ kind: 'withdrawal', withdraws: gone.id, ...because })
    expect(fold([entry, gone]).live('note')).toEqual([])
    expect(fold([entry, gone, back]).live('note')).toHaveLength(1)
  })

  it('leaves the old words standing when their correction was withdrawn', () => {
    const make = entryMaker()
    const first = make(words('12.5 kg'))
    const correction = make({ ...words('125 kg'), supersedes: [first.id], ...because })
    const gone = make({ kind: 'withdrawal', withdraws: correction.id, ...because })
    const theCase = fold([first, correction, gone])
    expect(theCase.live('note').map((line) => line.body.text)).toEqual(['12.5 kg'])
    expect(theCase.conflicts).toEqual([])
  })

  it('holds two corrections of one entry side by side until a person supersedes both', () => {
    const make = entryMaker()
    const first = make(words('a'))
    const one = make({ ...words('b'), supersedes: [first.id], ...because })
    const other = make({ ...words('c'), supersedes: [first.id], ...because })
    const conflict = { because: 'same-target', kind: 'note', key: null, between: [one.id, other.id] }
    expect(fold([first, one, other]).conflicts).toEqual([conflict])
    const later = make({ ...words('d'), supersedes: [other.id], ...because })
    expect(fold([first, one, other, later]).conflicts).toEqual([{ ...conflict, between: [one.id, later.id] }])
    const settled = make({ ...words('e'), supersedes: [one.id, later.id], ...because })
    const theCase = fold([first, one, other, later, settled])
    expect(theCase.conflicts).toEqual([])
    expect(theCase.live('note').map((line) => line.body.text)).toEqual(['e'])
  })

  it('holds two stamps of one checkpoint side by side, never the last writer', () => {
    const make = entryMaker()
    const one = make({ kind: 'theatre-stamp' })
    const other = make({ kind: 'theatre-stamp' })
    expect(fold([one, other]).conflicts).toEqual([
      {
        because: 'same-key',
        kind: 'theatre-stamp',
        key: '["operation-1","k3-facial-nerve"]',
        between: [one.id, other.id],
      },
    ])
    const settled = make({ kind: 'theatre-stamp', supersedes: [one.id, other.id], ...because })
    expect(fold([one, other, settled]).conflicts).toEqual([])
  })

  it('lets an entry wait for the one it corrects', () => {
    const make = entryMaker()
    const late = make(words('first'))
    const early = make({ ...words('second'), supersedes: [late.id], ...because })
    expect(fold([early]).pending).toEqual([{ entry: early.id, missing: [late.id] }])
    expect(fold([early]).live('note')).toHaveLength(1)
    expect(fold([early, late])).toMatchObject({ pending: [], conflicts: [] })
  })

  it('reports a ring, and lets none of its members hide another', () => {
    const make = entryMaker()
    const one = make({ ...words('a'), supersedes: [testId(2)], ...because })
    const two = make({ ...words('b'), supersedes: [testId(1)], ...because })
    const theCase = fold([one, two])
    expect(theCase.conflicts).toEqual([{ because: 'cycle', kind: 'note', key: null, between: [one.id, two.id] }])
    expect(theCase.live('note')).toHaveLength(2)
  })

  it('keeps an entry of an unknown kind, and of a version from the future, and shows them as such', () => {
    const make = entryMaker()
    const strange: Entry = { ...make(), kind: 'gait-analysis', body: { frames: 12 } }
    const newer: Entry = { ...make({ kind: 'weight' }), version: 99 }
    const theCase = fold([strange, newer])
    expect(theCase.unknown.map((line) => line.header.kind)).toEqual(['gait-analysis', 'weight'])
    expect(theCase.live('weight')).toEqual([])
    expect(readEntry(strange).kind).toBe('answer')
    expect(readEntry(newer).kind).toBe('answer')
  })

  it('orders by the corrected time: a device that was ten minutes fast is put where it belongs', () => {
    const make = entryMaker()
    const device = { id: 'tablet-2', boot: 'boot-1', wallClock: '2026-03-01T10:10:00.000Z', monotonicMs: 5 }
    const clocked = (at: string, offset: { ms: number; ageMs: number } | null) =>
      make({
        ...words(at),
        happenedAt: { at, zone: 'Europe/London', precision: 'second', by: 'clock' },
        device: { ...device, offset },
      })
    const fast = clocked('2026-03-01T10:10:00.000Z', { ms: -600_000, ageMs: 1000 })
    const unmeasured = clocked('2026-03-01T10:05:00.000Z', null)
    const theCase = fold([unmeasured, fast])
    expect(theCase.lines.map((line) => [line.at, line.orderCertain])).toEqual([
      ['2026-03-01T10:00:00.000Z', true],
      ['2026-03-01T10:05:00.000Z', false],
    ])
    // What is said of them everywhere is their corrected moment.
    expect(theCase.lines.map(({ header }) => header.happenedAt.at)).toEqual(theCase.lines.map(({ at }) => at))
  })

  it('marks what arrives about a finished operation as late, and never drops it', () => {
    const make = entryMaker()
    const summary = make({ kind: 'operation-summary' })
    const stamp = make({ kind: 'theatre-stamp' })
    const place = { position: 1, sequence: 1, previous: null }
    const theCase = fold([
      seal(summary, { ...place, receivedAt: '2026-03-01T12:00:00.000Z' }),
      seal(stamp, { ...place, receivedAt: '2026-03-01T16:00:00.000Z' }),
    ])
    expect(theCase.latest('theatre-stamp')?.late).toBe('operation-finished')
  })

  it('marks a stamp written hours after it happened', () => {
    const make = entryMaker()
    const stamp = { ...make({ kind: 'theatre-stamp' }), writtenAt: '2026-03-01T17:00:00.000Z' }
    expect(fold([stamp]).latest('theatre-stamp')?.late).toBe('written-later')
  })

  it('files an entry to the right animal: gone here, there with its own time, and back when that was wrong', () => {
    const make = entryMaker()
    const entry = make({ kind: 'ear-findings' })
    const written = make()
    const to = { stream: 'case:0002', subject: { kind: 'ear', animal: 'animal-2', side: 'LEFT' } } as const
    const [copy, withdrawing] = refile(entry, to, 'Other dog of the same owner.', [testId(90), testId(91)], written)
    for (const one of [copy, withdrawing]) expect(readEntry(one).kind).toBe('answer')
    expect(fold([entry, withdrawing]).live('ear-findings')).toEqual([])
    expect(fold([copy]).latest('ear-findings')).toMatchObject({
      at: entry.happenedAt.at,
      header: { refiledFrom: entry.id },
    })
    const back = make({ kind: 'withdrawal', withdraws: withdrawing.id, ...because })
    expect(fold([entry, withdrawing, back]).live('ear-findings')).toHaveLength(1)
  })

  it('asks a correction for its reason', () => {
    const make = entryMaker()
    expect(readEntry(make({ ...words('x'), supersedes: [testId(9)] }))).toMatchObject({
      kind: 'refusal',
      refusal: { because: 'reason-missing', path: 'reason' },
    })
  })
})
