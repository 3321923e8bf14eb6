import { describe, expect, it } from 'vitest'
import { sameContact } from './same-contact.ts'

const row = { name: 'Rosalind Okafor', phone: '01632 960111', email: 'rosalind@harbour.example' }
const typed = (part: Partial<typeof row>) => ({ name: 'Somebody', phone: null, email: null, ...part })

describe('somebody who is typed', () => {
  it.each([
    ['the phone, in any way of writing it', { phone: '+44 (1632) 960-111' }, ['same-phone']],
    ['the e-mail, in capitals too', { email: ' Rosalind@Harbour.example ' }, ['same-email']],
    ['the name, with other accents and capitals', { name: 'ROSALIND  Okáfor' }, ['same-name']],
    ['all three, the surest first', row, ['same-phone', 'same-email', 'same-name']],
  ] as const)('may be on record by %s', (_, part, reasons) => {
    expect(sameContact(typed(part), row)).toEqual(reasons)
  })

  it('is nobody on record by what is empty, too short or only like it', () => {
    const nothing = { name: '', phone: '', email: '' }
    expect(sameContact(nothing, { name: '', phone: null, email: null })).toEqual([])
    expect(sameContact(nothing, nothing)).toEqual([])
    expect(sameContact(typed({ phone: '0111' }), { ...row, phone: '0111' })).toEqual([])
    expect(sameContact(typed({ name: 'Rosalind Okafo' }), row)).toEqual([])
    expect(sameContact(typed({ phone: '01632 960112' }), row)).toEqual([])
  })
})
