import { describe, expect, it } from 'vitest'
import { sealAll } from '#core/journal/chain.ts'
import { entryMaker, testId } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { caseFile } from './case-file.ts'

const at = '2026-03-01T08:00:00.000Z'
const clinicBody = {
  name: 'Invented clinic',
  address: [],
  phone: '0',
  outOfHoursPhone: null,
  email: null,
  zone: 'Europe/London',
  language: 'en',
  decimalMark: '.',
  currency: 'GBP',
  closedWeekdays: [7],
}
const row = (register: Row['register'], id: string, revision: number, body: Row['body']): Row => ({
  register,
  id,
  revision,
  body,
  by: 'x',
  at,
})

function journal(entries: readonly Entry[]) {
  return {
    clinic: 'clinic-1',
    rows: [
      row('clinic', 'clinic-1', 1, clinicBody),
      row('person', 'person-1', 2, { name: 'New name', role: 'nurse', letters: null }),
      row('person', 'person-1', 1, { name: 'Old name', role: 'nurse', letters: null }),
      row('person', 'person-2', 1, null),
    ],
    entries: sealAll(entries, () => at),
  }
}

const merge = {
  otherStream: 'case:0002',
  otherAnimal: 'animal-2',
  matchedOn: ['chip' as const],
  secondPerson: 'person-1',
}

describe('a case file', () => {
  it('takes the highest revision of a row and leaves an erased one out', () => {
    const { people } = caseFile(journal([]), 'case:0001')
    expect([...people]).toEqual([['person-1', { name: 'New name', role: 'nurse', letters: null }]])
  })

  it('reads two merged files as one case from either side, and as two again when the merge is withdrawn', () => {
    const make = entryMaker()
    const here = make({ kind: 'weight' })
    const there = make({ kind: 'weight', stream: 'case:0002' })
    const joined = make({ kind: 'merge', body: merge })
    const weights = (entries: readonly Entry[], stream: string) =>
      caseFile(journal(entries), stream)
        .theCase.live('weight')
        .map((line) => line.header.id)
    expect(weights([here, there], 'case:0001')).toEqual([here.id])
    for (const stream of ['case:0001', 'case:0002']) {
      expect(weights([here, there, joined], stream)).toEqual([testId(1), testId(2)])
    }
    const undone = make({ kind: 'withdrawal', withdraws: joined.id, reason: 'Two dogs after all.' })
    expect(weights([here, there, joined, undone], 'case:0002')).toEqual([there.id])
  })

  it('is refused without a clinic line', () => {
    expect(() => caseFile({ clinic: 'c', rows: [], entries: [] }, 'case:0001')).toThrow('no clinic line')
  })
})
