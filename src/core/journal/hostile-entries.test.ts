import { describe, expect, it } from 'vitest'
import { closesRing, readEntry } from './accept.ts'
import { firstBreak, seal, sealAll } from './chain.ts'
import { refile } from './correct.ts'
import { entryMaker, testId } from './entries-for-tests.ts'
import { correctedInstant, type Entry } from './entry.ts'
import { fold } from './fold.ts'

const because = { reason: 'Typed in the wrong line.' }
const words = (text: string) => ({ kind: 'note', body: { text } }) as const
const refusalOf = (input: unknown) => {
  const read = readEntry(input)
  return read.kind === 'refusal' ? read.refusal : undefined
}

describe('an entry at the door', () => {
  it.each(['2026-02-30T08:00:00.000Z', '2026-13-01T08:00:00.000Z', '2026-01-01T24:00:00.000Z'])(
    'is refused when its time does not exist: %s',
    (at) => {
      expect(refusalOf(entryMaker()({ at }))).toMatchObject({ because: 'not-an-entry', path: 'happenedAt.at' })
    },
  )

  it('is refused with an id in capital letters, its own or one it points at: it would be another entry', () => {
    const make = entryMaker()
    const capital = 'ABCDEF00-0000-7000-8000-000000000001'
    expect(refusalOf(make({ id: capital }))?.path).toBe('id')
    expect(refusalOf(make({ supersedes: [capital], ...because }))?.path).toBe('supersedes.0')
    const order = { entry: capital, because: 'The owner asked.', orderedBy: 'person-manager' }
    expect(refusalOf(make({ kind: 'erasure', body: order }))?.path).toBe('body.entry')
  })

  it('is refused, not a crash, when its body is nested without end', () => {
    const nested = JSON.parse(`${'['.repeat(100_000)}${']'.repeat(100_000)}`) as Entry['body']
    const entry = { ...entryMaker()(), kind: 'from-tomorrow', body: nested }
    expect(refusalOf(entry)).toMatchObject({ because: 'not-an-entry', path: 'body' })
  })

  it('is refused, not a crash, when it supersedes more entries than any conflict has', () => {
    const supersedes = Array.from({ length: 200_000 }, (_, at) => testId(at))
    expect(refusalOf(entryMaker()({ supersedes, ...because }))?.path).toBe('supersedes')
  })
})

describe('an accepted entry', () => {
  it('verifies for ever also when a newer program gave it no body at all', () => {
    const make = entryMaker()
    const entry: Entry = { ...make(), kind: 'from-tomorrow', body: null }
    expect(readEntry(entry).kind).toBe('answer')
    const stored = sealAll([entry, make()], () => '2026-03-02T08:00:00.000Z')
    expect(firstBreak(stored)).toBeUndefined()
    const [, second] = stored
    if (!second) throw new Error('no second entry')
    expect(firstBreak([...stored.slice(0, 1), { ...second, body: null }])).toMatchObject({ because: 'body-changed' })
  })

  it('is kept in its place, order uncertain, when its clock measurement leads out of the calendar', () => {
    const make = entryMaker()
    const happenedAt = { at: '2026-03-01T08:00:00.000Z', zone: 'UTC', precision: 'minute', by: 'clock' } as const
    for (const ms of [Number.MAX_SAFE_INTEGER, -Number.MAX_SAFE_INTEGER, 300_000_000_000_000]) {
      const entry = make({ happenedAt })
      const drifted = { ...entry, device: { ...entry.device, offset: { ms, ageMs: 0 } } }
      expect(correctedInstant(drifted)).toEqual({ at: happenedAt.at, certain: false })
      expect(() => seal(drifted, { position: 1, sequence: 1, receivedAt: happenedAt.at, previous: null })).not.toThrow()
    }
  })
})

describe('folding what nobody would write on purpose', () => {
  it('settles twenty thousand withdrawals of withdrawals', () => {
    const make = entryMaker()
    const entries = [make()]
    for (let at = 0; at < 20_000; at += 1) {
      entries.push(make({ kind: 'withdrawal', withdraws: entries.at(-1)?.id ?? '', ...because }))
    }
    const theCase = fold(entries)
    expect(theCase.live('note')).toHaveLength(1)
    expect(theCase.live('withdrawal')).toHaveLength(10_000)
  })

  it('walks a chain of twenty thousand corrections once, not once for each', () => {
    const make = entryMaker()
    const entries = [make()]
    for (let at = 0; at < 20_000; at += 1) entries.push(make({ supersedes: [entries.at(-1)?.id ?? ''], ...because }))
    const theCase = fold(entries)
    expect(theCase.live('note').map(({ header }) => header.id)).toEqual([entries.at(-1)?.id])
    expect(theCase.conflicts).toEqual([])
    // Once for each took twenty seconds; once takes a twentieth of one.
  }, 3_000)

  it('counts a target once when it is named twice', () => {
    const make = entryMaker()
    const first = make()
    const twice = make({ supersedes: [first.id, first.id], ...because })
    expect(fold([first, twice]).line(first.id)?.supersededBy).toEqual([twice.id])
  })

  it('marks the entries of a ring and no other, and lets what hangs on the ring stand', () => {
    const make = entryMaker()
    const [a, b, outside] = [make(), make(), make()]
    const ring = [
      { ...a, supersedes: [b.id, outside.id], ...because },
      { ...b, supersedes: [a.id], ...because },
    ]
    const self = { ...make(), supersedes: [testId(4)], ...because }
    const last = make({ supersedes: [a.id], ...because })
    const theCase = fold([...ring, outside, self, last])
    expect(theCase.conflicts[0]).toMatchObject({ because: 'cycle', between: [a.id, b.id, self.id] })
    expect(theCase.line(outside.id)?.state).toBe('live')
    expect(theCase.line(a.id)?.state).toBe('superseded')
  })

  it('walks a long list of targets when it looks for a ring', () => {
    const entry = entryMaker()({ supersedes: [testId(500)], ...because })
    const many = Array.from({ length: 300_000 }, (_, at) => testId(1_000 + at))
    expect(closesRing(entry, (id) => (id === testId(500) ? many : []))).toBe(false)
  })

  it('shows old and newest words side by side when the correction between them was withdrawn', () => {
    const make = entryMaker()
    const first = make(words('20 mg'))
    const between = make({ ...words('2 mg'), supersedes: [first.id], ...because })
    const newest = make({ ...words('2.0 mg'), supersedes: [between.id], ...because })
    const gone = make({ kind: 'withdrawal', withdraws: between.id, ...because })
    expect(fold([first, between, newest, gone]).conflicts).toEqual([
      { because: 'same-target', kind: 'note', key: null, between: [first.id, newest.id] },
    ])
  })

  it('never lets the words come back that were corrected before the correction was refiled to another animal', () => {
    const make = entryMaker()
    const wrong = make(words('20 mg'))
    const right = make({ ...words('2 mg'), supersedes: [wrong.id], ...because })
    const to = { stream: 'case:0002', subject: { kind: 'animal', animal: 'animal-2' } } as const
    const { happenedAt, writtenAt, author, device } = make()
    const written = { happenedAt, writtenAt, author, device }
    const [copy, moved] = refile(right, to, 'Other dog of the same owner.', [testId(90), testId(91)], written)
    expect(fold([wrong, right, moved]).live('note')).toEqual([])
    expect(fold([copy]).live('note')).toHaveLength(1)
  })

  it('tells an ampoule "A 1" of "methadone" from an ampoule "1" of "methadone A"', () => {
    const make = entryMaker()
    const example = make({ kind: 'drug-wasted' }).body as { readonly drug: string }
    const wasted = (drug: string, ampoule: string) => ({
      ...make({ kind: 'drug-wasted' }),
      body: { ...example, drug, ampoule },
    })
    expect(fold([wasted('methadone', 'A 1'), wasted('methadone A', '1')]).conflicts).toEqual([])
    expect(fold([wasted('methadone', 'A 1'), wasted('methadone', 'A 1')]).conflicts).toHaveLength(1)
  })
})
