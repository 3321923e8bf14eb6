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

export const carbomer = drug({
  id: 'carbomer',
  name: 'carbomer eye gel',
  aliases: ['carbomer gel', 'carbomer gel 0.2%', 'carbomer-gel'],
  class: 'ocular lubricant',
  groups: ['ocular-lubricant'],
  doses: [
    {
      species: 'dog',
      use: 'eye',
      routes: ['topical-eye'],
      range: { value: range('1', '2', '[drp]/{eye}'), ...eyes },
      interval: { value: { words: 'every 4 to 6 h; every 1 to 2 h without a blink', hours: ['4', '6'] }, ...eyes },
      stocks: { value: [{ words: '0.2 % gel' }], ...products },
      cautions: {
        value: [{ words: 'both eyes under anaesthesia; the operated side before it wakes' }],
        ...eyes,
      },
      exclusions: {
        value: [],
        ...eyes,
      },
    },
    {
      species: 'cat',
      use: 'eye',
      routes: ['topical-eye'],
      range: { value: range('1', '2', '[drp]/{eye}'), ...eyes },
      interval: { value: { words: 'every 4 to 6 h; every 1 to 2 h without a blink', hours: ['4', '6'] }, ...eyes },
      stocks: { value: [{ words: '0.2 % gel' }], ...products },
      cautions: {
        value: [{ words: 'both eyes under anaesthesia; the operated side before it wakes' }],
        ...eyes,
      },
      exclusions: {
        value: [],
        ...eyes,
      },
    },
  ],
  none: [],
})
