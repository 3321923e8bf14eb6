import { drug, range } from '#core/formulary/drug.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const eyes = {
  sources: ['ophthalmology-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const paraffinEyeOintment = drug({
  id: 'paraffin-eye-ointment',
  name: 'paraffin eye ointment',
  aliases: ['liquid/white soft paraffin ointment', 'white soft paraffin'],
  class: 'ocular lubricant',
  groups: ['ocular-lubricant'],
  doses: [
    {
      species: 'dog',
      use: 'eye',
      routes: ['topical-eye'],
      range: { value: range('0.5', '1', 'cm/{eye}'), ...eyes },
      interval: { value: { words: 'every hour under anaesthesia; every 4 to 6 h and at bedtime' }, ...eyes },
      stocks: { value: [{ words: 'ointment' }], ...products },
      cautions: {
        value: [{ words: 'blurs sight' }],
        ...eyes,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['corneal-perforation'] }, because: 'a hole in the cornea' }],
        ...eyes,
      },
    },
    {
      species: 'cat',
      use: 'eye',
      routes: ['topical-eye'],
      range: { value: range('0.5', '1', 'cm/{eye}'), ...eyes },
      interval: { value: { words: 'every hour under anaesthesia; every 4 to 6 h and at bedtime' }, ...eyes },
      stocks: { value: [{ words: 'ointment' }], ...products },
      cautions: {
        value: [{ words: 'blurs sight' }],
        ...eyes,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['corneal-perforation'] }, because: 'a hole in the cornea' }],
        ...eyes,
      },
    },
  ],
  none: [],
})
