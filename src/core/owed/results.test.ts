import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { emptyReport } from '#core/culture/empty-report.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Author, Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { PersonRow } from '#core/journal/registers.ts'
import type { Leave } from '#core/people/leave.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'
import { deputyOf, ownership } from './sort.ts'

const make = entryMaker()
const by = (person: string): { author: Author } => ({ author: { kind: 'person', person } })
const plannedFor = { at: '2026-03-04T09:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' } as const
const booking = make({
  kind: 'booking',
  body: {
    side: 'LEFT',
    procedure: 'teca-lbo',
    agreement: null,
    plannedFor,
    surgeon: 'person-holm',
    anaesthetist: null,
  },
})
const cut = make({
  kind: 'theatre-stamp',
  at: plannedFor.at,
  body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
})
const specimen = make({ kind: 'specimen', at: '2026-03-04T10:00:00.000Z', ...by('person-nurse') })

function report(at: string, status: BodyOf<'specimen-result'>['status'], before: Entry | null = null): Entry {
  return make({
    kind: 'specimen-result',
    at,
    body: { ...emptyReport, specimen: specimen.id, status, growth: 'growth' },
    ...(before && { supersedes: [before.id], reason: 'The laboratory corrected it.' }),
  })
}

function reading(
  result: Entry,
  decision: BodyOf<'result-read'>['decision'],
  at: string,
  person = 'person-holm',
): Entry {
  const body = { result: result.id, decision, edition: null, text: 'Read.' }
  return make({ kind: 'result-read', at, body, ...by(person) })
}

function telling(about: Entry, who: 'owner' | 'referring-vet', at: string, person = 'person-nurse'): Entry {
  const body = { about: about.id, who, contact: 'contact-1', by: 'phone', text: null } as const
  return make({ kind: 'told', at, body, ...by(person) })
}

const people = new Map<string, PersonRow>([
  ['person-holm', { name: 'Imke Holm', role: 'surgeon', letters: null }],
  ['person-second', { name: 'Ada Second', role: 'surgeon', letters: null }],
  ['person-nurse', { name: 'Priya Nurse', role: 'nurse', letters: null }],
])
const ofLoop = new Set([
  'result-expected',
  'result-to-read',
  'result-to-decide',
  'owner-to-tell',
  'referring-vet-to-tell',
  'unfiled-to-hear',
  'told-to-put-right',
  'change-to-review',
])

function all(...entries: Entry[]) {
  const file = { ...fileOf([booking, cut, specimen, ...entries]), people }
  return owedOf(file, procedures, { rules: owedRules })
}

function owed(...entries: Entry[]) {
  const { owed: items } = all(...entries)
  return items
    .filter(({ what }) => ofLoop.has(what))
    .map((item) => ({ what: item.what, person: item.person, said: sayOwed(item, owedInEnglish), who: item.who }))
}
const whats = (...entries: Entry[]) => owed(...entries).map(({ what }) => what)

const final = report('2026-03-08T10:00:00.000Z', 'final')
const read = reading(final, 'no-change', '2026-03-08T11:00:00.000Z')

describe('each step of the loop has a name', () => {
  it('who took it asks after it; the surgeon of the operation reads, decides and tells', () => {
    expect(owed().map(({ what, person }) => [what, person])).toEqual([['result-expected', 'person-nurse']])
    expect(owed(final).map(({ what, person }) => [what, person])).toEqual([['result-to-read', 'person-holm']])
    expect(owed(final, read).map(({ what, person }) => [what, person])).toEqual([['owner-to-tell', 'person-holm']])
  })

  it('is every surgeon’s when the surgeon of the operation no longer works here', () => {
    const file = { ...fileOf([booking, cut, specimen, final]), people: new Map([...people].slice(1)) }
    const item = owedOf(file, procedures, { rules: owedRules }).owed.find(({ what }) => what === 'result-to-read')
    expect([item?.who, item?.person]).toEqual(['surgeon', null])
  })

  it('goes to the deputy while that surgeon is away, and comes back', () => {
    const staff = [...people].map(([id, { role }]) => ({ id, role }))
    const leaves: Leave[] = [
      { person: 'person-holm', from: '2026-03-07', until: '2026-03-14', deputy: 'person-second' },
    ]
    const [item] = owed(final)
    const row = { who: item?.person ?? '' }
    const second = { id: 'person-second', role: 'surgeon' }
    expect(deputyOf(row, staff, leaves, '2026-03-08')).toBe('person-second')
    const away = { kind: 'mine', because: 'as-deputy', of: 'person-holm' }
    expect(ownership(row, second, staff, leaves, '2026-03-08')).toEqual(away)
    expect(ownership(row, second, staff, leaves, '2026-03-15')).toEqual({ kind: 'others' })
  })
})

describe('a reading that decides later', () => {
  it('settles the reading and leaves the decision owed; the owner is told what was decided', () => {
    const later = reading(final, 'decide-later', '2026-03-08T11:00:00.000Z')
    expect(whats(final, later)).toEqual(['result-to-decide'])
    expect(whats(final, later, reading(final, 'no-change', '2026-03-09T11:00:00.000Z'))).toEqual(['owner-to-tell'])
  })
})

describe('a report that is not final', () => {
  it('is read, and the final one is still expected and read again', () => {
    const early = report('2026-03-06T10:00:00.000Z', 'preliminary')
    const earlyRead = reading(early, 'no-change', '2026-03-06T11:00:00.000Z')
    expect(whats(early, earlyRead)).toEqual(['result-expected'])
    const then = report('2026-03-08T10:00:00.000Z', 'final', early)
    expect(whats(early, earlyRead, then)).toEqual(['result-to-read'])
  })
})

describe('a report that the laboratory corrected', () => {
  const told = telling(final, 'owner', '2026-03-08T12:00:00.000Z')
  const change = make({
    kind: 'medicine-change',
    at: '2026-03-08T11:30:00.000Z',
    body: { read: read.id, because: 'Resistant.', stops: [], starts: [] },
    ...by('person-holm'),
  })
  const corrected = report('2026-03-10T10:00:00.000Z', 'corrected', final)

  it('is read again, and names everybody who had acted on the version before', () => {
    const [item, ...others] = owed(final, read, told, change, corrected)
    expect(others).toEqual([])
    expect(item?.what).toBe('result-to-read')
    expect(item?.said.why).toContain('Imke Holm read the version before on 8 March 2026, 11:00')
    expect(item?.said.why).toContain('Imke Holm changed the medicines because of the version before')
    expect(item?.said.why).toContain('The owner was told of the version before on 8 March 2026, 12:00, by Priya Nurse')
  })

  it('is told again: what the owner heard was the other version', () => {
    const again = reading(corrected, 'no-change', '2026-03-10T11:00:00.000Z')
    const [item] = owed(final, read, told, corrected, again)
    expect(item?.what).toBe('owner-to-tell')
    expect(item?.said.why).toContain('The owner was told of the version before')
    expect(whats(final, read, told, corrected, again, telling(corrected, 'owner', '2026-03-10T12:00:00.000Z'))).toEqual(
      [],
    )
  })
})

describe('a reading that was corrected', () => {
  const told = telling(final, 'owner', '2026-03-08T12:00:00.000Z')
  const again = (decision: 'no-change' | 'stop') =>
    make({
      kind: 'result-read',
      at: '2026-03-09T09:00:00.000Z',
      body: { result: final.id, decision, edition: null, text: 'Read.' },
      supersedes: [read.id],
      reason: 'Looked again.',
    })

  it('to another decision is told again; one whose words alone changed is not', () => {
    expect(whats(final, read, told, again('stop'))).toEqual(['owner-to-tell'])
    expect(whats(final, read, told, again('no-change'))).toEqual([])
  })
})

describe('a report that was another animal’s', () => {
  const told = telling(final, 'owner', '2026-03-08T12:00:00.000Z')
  const change = make({
    kind: 'medicine-change',
    at: '2026-03-08T11:30:00.000Z',
    body: { read: read.id, because: 'Resistant.', stops: [], starts: [] },
    ...by('person-holm'),
  })
  const away = make({
    kind: 'refile',
    at: '2026-03-09T10:00:00.000Z',
    withdraws: final.id,
    reason: 'It is of the other Bella.',
    ...by('person-nurse'),
  })
  const unfiled = [final, read, change, told, away]

  it('is owed to whoever read it, told again to whoever was told, and its change is looked at again', () => {
    const items = owed(...unfiled)
    expect(items.map(({ what, person }) => [what, person])).toEqual([
      ['result-expected', 'person-nurse'],
      ['change-to-review', 'person-holm'],
      ['told-to-put-right', 'person-holm'],
      ['unfiled-to-hear', 'person-holm'],
    ])
    expect(items[3]?.said.why).toContain('Taken away by Priya Nurse on 9 March 2026, 10:00. It is of the other Bella.')
    expect(items[2]?.said.what).toContain('Tell the owner that the result of')
  })

  it('ends with the reading taken back, the owner told, and another change', () => {
    const back = make({ kind: 'withdrawal', at: '2026-03-09T11:00:00.000Z', withdraws: read.id, reason: 'Unfiled.' })
    const tell = telling(away, 'owner', '2026-03-09T12:00:00.000Z')
    const undo = make({
      kind: 'medicine-change',
      at: '2026-03-09T12:00:00.000Z',
      body: { read: null, because: 'Back to the drug of before.', stops: [], starts: [] },
    })
    expect(whats(...unfiled, back, tell, undo)).toEqual(['result-expected'])
    // Taking the reading back takes neither the tablets nor the call back.
    expect(whats(...unfiled, back)).toEqual(['result-expected', 'change-to-review', 'told-to-put-right'])
  })

  it('leaves nothing behind where nobody had acted', () => {
    expect(whats(final, away)).toEqual(['result-expected'])
  })
})
