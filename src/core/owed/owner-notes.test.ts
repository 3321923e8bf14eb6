import { expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { call } from '#core/journal/kinds/call.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'

const make = entryMaker()
const owner = { kind: 'owner-link', contact: 'contact-1' } as const
const wrote = (at: string, author: Entry['author'] = owner) => make({ kind: 'owner-note', at, author })
const answered = (note: Entry, at: string) =>
  make({ kind: 'owner-reply', at, body: { note: note.id, text: 'Thank you.' } })
const first = wrote('2026-03-02T20:00:00.000Z')
const second = wrote('2026-03-02T21:00:00.000Z')

const read = (...entries: readonly Entry[]) => {
  const { owed, closed } = owedOf(fileOf(entries), procedures, { rules: owedRules })
  const mine = (id: string) => id.startsWith('owner-note-to-answer')
  return {
    owed: owed.filter(({ id }) => mine(id)),
    closed: closed.filter(({ item }) => mine(item.id)).map(({ because }) => because),
  }
}

it('each note of an owner is owed an answer within a day, and only its own answer or a word with that person settles it', () => {
  expect(read(first).owed).toMatchObject([{ who: 'nurse', dueBy: '2026-03-03T20:00:00.000Z', side: 'LEFT' }])
  expect(read(first, second).owed).toHaveLength(2)
  const to = answered(second, '2026-03-03T08:00:00.000Z')
  expect(read(first, second, to).owed.map(({ id }) => id)).toEqual([`owner-note-to-answer:${first.id}`])
  expect(read(first, answered(first, '2026-03-04T08:00:00.000Z')).closed).toEqual(['settled-late'])
})

it('a call settles it when that person was reached after it; a try, another person and a note do not', () => {
  const rang = (change: Partial<typeof call.example>, at = '2026-03-03T09:00:00.000Z') =>
    make({ kind: 'call', at, body: { ...call.example, ...change } as typeof call.example })
  expect(read(first, rang({})).closed).toEqual(['settled'])
  expect(read(first, rang({ reached: 'no' as 'yes' })).owed).toHaveLength(1)
  expect(read(first, rang({ contact: 'contact-2' })).owed).toHaveLength(1)
  expect(read(first, rang({}, '2026-03-02T19:00:00.000Z')).owed).toHaveLength(1)
  expect(read(first, make({ kind: 'note', at: '2026-03-03T09:00:00.000Z' })).owed).toHaveLength(1)
})

it('what the house wrote down was heard, an answer that was taken back answers nothing, and death ends the asking', () => {
  expect(read(wrote('2026-03-02T20:00:00.000Z', { kind: 'person', person: 'person-nurse' }))).toEqual({
    owed: [],
    closed: [],
  })
  const reply = answered(first, '2026-03-03T08:00:00.000Z')
  const back = make({
    kind: 'withdrawal',
    at: '2026-03-03T08:05:00.000Z',
    withdraws: reply.id,
    reason: 'Wrong animal.',
  })
  expect(read(first, reply, back).owed).toHaveLength(1)
  expect(read(first, make({ kind: 'death', at: '2026-03-03T08:00:00.000Z' })).closed).toEqual(['death'])
})
