import { describe, expect, it } from 'vitest'
import { contactRow } from '#core/journal/registers.ts'
import { contactFaults, contactOf, nothingTyped, typedOf } from './contact-typed.ts'

const ada = {
  ...nothingTyped,
  name: ' Ada Alder ',
  phone: '+44 1632 960101 ext. 4',
  address: '1 Mill Lane\n\n Fenbridge ',
}

describe('a contact as it is typed', () => {
  it('becomes the row that is kept, and is typed again from it', () => {
    const row = contactOf(ada, 'owner')
    expect(row).toEqual({
      kind: 'owner',
      name: 'Ada Alder',
      practice: null,
      phone: '+44 1632 960101 ext. 4',
      email: null,
      address: ['1 Mill Lane', 'Fenbridge'],
    })
    expect(contactRow.parse(row)).toEqual(row)
    expect(contactOf(typedOf(row), 'owner')).toEqual(row)
  })

  it('needs a name, digits in a phone number and an address in an e-mail, and no more', () => {
    expect(contactFaults(ada)).toEqual([])
    expect(contactFaults({ ...ada, email: 'ada@alder.example' })).toEqual([])
    expect(contactFaults({ ...nothingTyped, name: ' ', phone: 'at work', email: 'ada at alder' })).toEqual([
      'name-missing',
      'phone-without-digits',
      'email-unreadable',
    ])
    expect(contactFaults({ ...ada, address: 'x'.repeat(301) })).toEqual(['address-line-too-long'])
  })
})
