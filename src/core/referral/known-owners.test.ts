import { describe, expect, it } from 'vitest'
import { knownOwners } from './known-owners.ts'

const okafor = { contact: 'c1', householdId: 'h1', ownerName: 'Rosalind Okafor', ownerPhone: '01632 960111' }
const rows = [
  { name: 'Tansy', ...okafor },
  { name: 'Rue', ...okafor },
  { name: 'Moss', contact: 'c2', householdId: 'h2', ownerName: 'Mateus Fennimore', ownerPhone: '01632 960121' },
  { name: 'Stray', contact: null, householdId: null, ownerName: null, ownerPhone: null },
]

describe('owners on file', () => {
  it('are found by the phone however it is spaced, and by part of the name, each once with their animals', () => {
    const found = [
      { contact: 'c1', household: 'h1', name: 'Rosalind Okafor', phone: '01632 960111', animals: ['Tansy', 'Rue'] },
    ]
    expect(knownOwners(rows, { ownerName: '', ownerPhone: '01632-960 111' })).toEqual(found)
    expect(knownOwners(rows, { ownerName: 'okaf', ownerPhone: '' })).toEqual(found)
  })

  it('are not offered by two letters or the code of a town', () => {
    expect(knownOwners(rows, { ownerName: 'Ro', ownerPhone: '01632' })).toEqual([])
  })
})
