import { describe, expect, it } from 'vitest'
import { addressBook } from './read-contacts.ts'

const row = (id: string, kind: string, name: string) => ({
  id,
  body: { kind, name, practice: null, phone: null, email: null, address: ['1 Invented Road'] },
})

describe('the address book', () => {
  it('holds vets, laboratories and others by name, and no owner and no address', () => {
    const rows = [row('c3', 'vet', 'Park'), row('c1', 'owner', 'Okafor'), row('c2', 'laboratory', 'Northfold')]
    expect(addressBook(rows)).toEqual([
      { id: 'c2', kind: 'laboratory', name: 'Northfold', practice: null, phone: null },
      { id: 'c3', kind: 'vet', name: 'Park', practice: null, phone: null },
    ])
  })
})
