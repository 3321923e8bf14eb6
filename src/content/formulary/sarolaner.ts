import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const label = {
  sources: ['us-isoxazoline-labels'],
  known: 'remembered',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const sarolaner = drug({
  id: 'sarolaner',
  name: 'sarolaner',
  aliases: [],
  class: 'isoxazoline',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antiparasitic',
      routes: ['PO'],
      range: { value: range('2', '2', 'mg/kg'), ...label },
      interval: { value: { words: 'every month' }, ...label },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('5', 'mg'), divides: 'unknown' },
          { strength: quantity('10', 'mg'), divides: 'unknown' },
          { strength: quantity('20', 'mg'), divides: 'unknown' },
          { strength: quantity('40', 'mg'), divides: 'unknown' },
          { strength: quantity('80', 'mg'), divides: 'unknown' },
          { strength: quantity('120', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'the least dose' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
        ],
        ...label,
      },
      exclusions: { value: [{ when: { kind: 'younger-than', months: 6 }, because: 'under 6 months' }], ...label },
    },
  ],
  none: [
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'for the cat the formulary read has the mixture with selamectin only: sarolaner-selamectin',
      ...label,
    },
  ],
})
