import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { begunCases } from './begun-cases.ts'
import { matchesOf } from './match.ts'

const owners = new Map([['contact-1', { name: 'Maud Ferris', phone: '01632 960180' }]])

describe('cases begun on this device', () => {
  const make = entryMaker({ stream: 'case:new' })
  const unsent = [make({ kind: 'household' }), make({ kind: 'identity' }), make({ stream: 'case:old' })]

  it('are rows of the list with the owner who waits beside them; a note in another case makes none', () => {
    expect(begunCases(unsent, new Set(), owners)).toMatchObject([
      { stream: 'case:new', name: 'Bramble', animal: 'animal-1', ownerName: 'Maud Ferris', ownerPhone: '01632 960180' },
    ])
  })

  it('are not listed twice once the server has them', () => {
    expect(begunCases(unsent, new Set(['case:new']), owners)).toEqual([])
  })

  it('are found by a second call about the same animal', () => {
    const nothing = { name: null, species: null, householdId: null, ownerName: null, ownerPhone: null, born: null }
    const [match] = matchesOf({ ...nothing, chip: identity.example.chip }, begunCases(unsent, new Set(), owners))
    expect(match).toMatchObject({ strength: 'likely', reasons: ['same-chip'], row: { stream: 'case:new' } })
  })
})
