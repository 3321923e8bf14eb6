import { expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { vetAnswer } from '#core/journal/kinds/vet-answer.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'

const make = entryMaker()
const practice = { kind: 'referring-vet', contact: 'contact-2' } as const
const answered = (at: string, body: Partial<BodyOf<'vet-answer'>> = {}, author: Entry['author'] = practice) =>
  make({ kind: 'vet-answer', at, author, body: { ...vetAnswer.example, ...body } })
const first = answered('2026-03-15T11:00:00.000Z')

const read = (...entries: readonly Entry[]) => {
  const { owed, closed } = owedOf(fileOf(entries), procedures, { rules: owedRules })
  const mine = (id: string) => id.startsWith('vet-')
  return {
    owed: owed.filter(({ id }) => mine(id)).map(({ what, id, who, dueBy }) => ({ what, id, who, dueBy })),
    closed: closed.filter(({ item }) => mine(item.id)).map(({ item, because }) => `${item.what}: ${because}`),
  }
}

it('an answer of the referring practice waits a day for the surgeon, the newest of one practice once', () => {
  const dueBy = '2026-03-16T11:00:00.000Z'
  expect(read(first).owed).toEqual([
    { what: 'vet-answer-to-read', id: `vet-answer-to-read:${first.id}`, who: 'surgeon', dueBy },
  ])
  const again = answered('2026-04-01T11:00:00.000Z')
  expect(read(first, again).owed.map(({ id }) => id)).toEqual([`vet-answer-to-read:${again.id}`])
  const other = answered('2026-04-01T12:00:00.000Z', {}, { kind: 'referring-vet', contact: 'contact-9' })
  expect(read(first, other).owed).toHaveLength(2)
})

it('what somebody of the house writes after it settles it; what came with it, or before, does not', () => {
  const look = make({ kind: 'check', at: '2026-03-15T11:00:00.000Z', author: practice })
  const later = make({ kind: 'check', at: '2026-03-16T00:00:00.000Z', author: practice })
  expect(read(first, look, later).owed).toHaveLength(1)
  expect(read(first, make({ kind: 'note', at: '2026-03-15T10:00:00.000Z' })).owed).toHaveLength(1)
  expect(read(first, make({ kind: 'note', at: '2026-03-15T12:00:00.000Z' }))).toEqual({
    owed: [],
    closed: ['vet-answer-to-read: settled'],
  })
  expect(read(first, make({ kind: 'call', at: '2026-03-17T12:00:00.000Z' })).closed).toEqual([
    'vet-answer-to-read: settled-late',
  ])
})

it('what the house wrote down for the practice was heard', () => {
  expect(read(answered('2026-03-15T11:00:00.000Z', {}, { kind: 'person', person: 'person-nurse' })).owed).toEqual([])
})

it('a death that it tells ends nothing by itself, is to be confirmed the same half day, and a note does not do it', () => {
  const booking = make({ kind: 'booking', at: '2026-02-20T08:00:00.000Z' })
  const summary = make({ kind: 'operation-summary', at: '2026-03-01T10:00:00.000Z' })
  const told = answered('2026-03-15T11:00:00.000Z', { saysDied: true })
  const visits = (entries: readonly Entry[]) =>
    owedOf(fileOf(entries), procedures, { rules: owedRules }).owed.filter(({ way }) => way === 'visit').length
  expect(visits([booking, summary, told])).toBe(visits([booking, summary]))
  expect(visits([booking, summary])).toBeGreaterThan(0)
  const note = make({ kind: 'note', at: '2026-03-15T12:00:00.000Z' })
  expect(read(told, note).owed).toMatchObject([{ what: 'vet-death-to-confirm', dueBy: '2026-03-15T15:00:00.000Z' }])
  const death = make({ kind: 'death', at: '2026-03-14T08:00:00.000Z' })
  expect(read(told, death)).toEqual({
    owed: [],
    closed: ['vet-death-to-confirm: death', 'vet-answer-to-read: death'],
  })
  const wrongAnimal = make({
    kind: 'withdrawal',
    at: '2026-03-15T12:00:00.000Z',
    withdraws: told.id,
    reason: 'They meant another animal.',
  })
  expect(read(told, wrongAnimal).owed).toEqual([])
})
