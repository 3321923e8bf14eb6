import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

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

const acvim = {
  sources: ['acvim-gi-2018'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const omeprazole = drug({
  id: 'omeprazole',
  name: 'omeprazole',
  aliases: [],
  class: 'proton-pump inhibitor',
  groups: ['gi-protectant'],
  doses: [
    {
      species: 'dog',
      use: 'gi_protectant',
      routes: ['PO', 'IV'],
      range: { value: range('0.7', '1', 'mg/kg'), ...acvim },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...acvim },
      stocks: { value: [{ strength: quantity('4', 'mg/mL'), words: 'into a vein' }], ...products },
      tablets: {
        value: [
          { strength: quantity('10', 'mg'), divides: 'unknown' },
          { strength: quantity('20', 'mg'), divides: 'unknown' },
          { strength: quantity('40', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'against reflux, flat-faced dogs above all' }],
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
      ...acvim,
    },
  ],
})
