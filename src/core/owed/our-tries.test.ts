import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { call as callKind } from '#core/journal/kinds/call.ts'
import type { ContactRow } from '#core/journal/registers.ts'
import { answered, operatedEar } from '#core/questionnaire/files-for-tests.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'

const contact = (id: string, kind: ContactRow['kind']): [string, ContactRow] => [
  id,
  { kind, name: id, practice: null, phone: '01632 960201', email: null, address: [] },
]

function owedBy(entries: readonly Entry[]) {
  const file: CaseFile = {
    ...fileOf(entries),
    contacts: new Map([contact('contact-1', 'owner'), contact('contact-lab', 'laboratory')]),
  }
  return owedOf(file, procedures, { rules: owedRules }).owed
}

describe('a talk with a laboratory is none with the owner', () => {
  const make = entryMaker()
  const entries = [operatedEar(make, 'LEFT', '2026-03-04')]
  const rang = (at: string, body: Partial<BodyOf<'call'>>) =>
    make({ kind: 'call', at, body: { ...callKind.example, ...body } })

  it('and settles nothing that an owner told or wrote', () => {
    const told = answered(make, '2027-03-01T10:00:00.000Z', { 'swelling.LEFT': 'yes' })
    const rungBy = (who: string) =>
      owedBy([...entries, told, rang('2027-03-01T12:00:00.000Z', { contact: who, reached: 'yes', about: 'result' })])
        .map(({ what }) => what)
        .filter((what) => what === 'owner-reported')
    expect(rungBy('contact-lab')).toEqual(['owner-reported'])
    expect(rungBy('contact-1')).toEqual([])
  })

  it('and three of them that reached nobody are no three tries to reach the owner', () => {
    const three = (who: string) =>
      (['phone', 'email', 'phone'] as const).map((channel, i) =>
        rang(`2027-03-0${i + 1}T10:00:00.000Z`, { contact: who, channel, reached: 'no', about: 'twelve-months' }),
      )
    const what = (who: string) =>
      owedBy([...entries, ...three(who)]).find(({ id }) => id.startsWith('twelve-months:'))?.what
    expect(what('contact-lab')).toBe('twelve-months')
    expect(what('contact-1')).toBe('unknown-may-be-recorded')
  })
})
