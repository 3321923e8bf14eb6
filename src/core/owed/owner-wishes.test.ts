import { expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'

const make = entryMaker()
const owner = { kind: 'owner-link', contact: 'contact-1' } as const
const wrote = (at: string, author: Entry['author'] = owner) => make({ kind: 'owner-wishes', at, author })
const first = wrote('2026-03-02T20:00:00.000Z')

const read = (...entries: readonly Entry[]) => {
  const { owed, closed } = owedOf(fileOf(entries), procedures, { rules: owedRules })
  const mine = (id: string) => id.startsWith('owner-wishes-to-read')
  return {
    owed: owed.filter(({ id }) => mine(id)),
    closed: closed.filter(({ item }) => mine(item.id)).map(({ because }) => because),
  }
}

it('what an owner sent is owed an eye within a day, the newest of one person once', () => {
  expect(read(first).owed).toMatchObject([{ who: 'surgeon', way: 'call', dueBy: '2026-03-03T20:00:00.000Z' }])
  const again = wrote('2026-03-04T20:00:00.000Z')
  expect(read(first, again).owed.map(({ id }) => id)).toEqual([`owner-wishes-to-read:${again.id}`])
  const other = wrote('2026-03-04T21:00:00.000Z', { kind: 'owner-link', contact: 'contact-2' })
  expect(read(first, other).owed).toHaveLength(2)
})

it('a call, a note, a choice or an agreement after it settles it; one before it does not, nor another owner', () => {
  const call = (at: string) => make({ kind: 'call', at })
  expect(read(first, call('2026-03-02T19:00:00.000Z')).owed).toHaveLength(1)
  expect(read(first, call('2026-03-03T09:00:00.000Z'))).toMatchObject({ owed: [], closed: ['settled'] })
  expect(read(first, make({ kind: 'choice', at: '2026-03-05T09:00:00.000Z' })).closed).toEqual(['settled-late'])
  const fromOwner = make({ kind: 'note', at: '2026-03-03T09:00:00.000Z', author: owner })
  expect(read(first, fromOwner).owed).toHaveLength(1)
})

it('what the house wrote down for the owner was heard, and death ends the asking', () => {
  const written = wrote('2026-03-02T20:00:00.000Z', { kind: 'person', person: 'person-nurse' })
  expect(read(written)).toEqual({ owed: [], closed: [] })
  expect(read(first, make({ kind: 'death', at: '2026-03-03T08:00:00.000Z' })).closed).toEqual(['death'])
})
