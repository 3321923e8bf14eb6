import { drug, range } from '#core/formulary/drug.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const texts = {
  sources: ['anaesthesia-texts'],
  known: 'remembered',
  strength: 'textbook',
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

export const sodiumHyaluronate = drug({
  id: 'sodium-hyaluronate',
  name: 'sodium hyaluronate eye drops',
  aliases: ['sodium hyaluronate 0.2-0.4%', 'hyaluronate'],
  class: 'ocular lubricant',
  groups: ['ocular-lubricant'],
  doses: [
    {
      species: 'dog',
      use: 'eye',
      routes: ['topical-eye'],
      range: { value: range('1', '1', '[drp]/{eye}'), ...eyes },
      interval: { value: { words: 'every 4 to 8 h' }, ...eyes },
      stocks: { value: [{ words: '0.2 % drops' }, { words: '0.4 % drops' }], ...products },
      cautions: {
        value: [{ words: 'stays longer; without preservative when every 2 h' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
  ],
  none: [
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'the formulary read has no row for cats',
      ...eyes,
    },
  ],
})
