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
  sources: ['cfr-21-520-998'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const mixture = {
  sources: ['cfr-21-524-1001'],
  where: 'the cat’s product holds moxidectin too',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const fluralaner = drug({
  id: 'fluralaner',
  name: 'fluralaner',
  aliases: [],
  class: 'isoxazoline',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antiparasitic',
      routes: ['PO'],
      range: { value: range('25', '25', 'mg/kg'), ...label },
      interval: { value: { words: 'every 12 weeks' }, ...label },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('112.5', 'mg'), divides: 'unknown' },
          { strength: quantity('250', 'mg'), divides: 'unknown' },
          { strength: quantity('500', 'mg'), divides: 'unknown' },
          { strength: quantity('1000', 'mg'), divides: 'unknown' },
          { strength: quantity('1400', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'the least dose; with food' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
        ],
        ...label,
      },
      exclusions: {
        value: [
          { when: { kind: 'younger-than', months: 2 }, because: 'under 8 weeks' },
          { when: { kind: 'lighter-than', weight: quantity('2', 'kg') }, because: 'under 2 kg' },
        ],
        ...label,
      },
    },
  ],
  none: [
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'for the cat the formulary read has the mixture with moxidectin only: fluralaner-moxidectin',
      ...mixture,
    },
  ],
})
