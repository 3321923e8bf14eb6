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

export const afoxolaner = drug({
  id: 'afoxolaner',
  name: 'afoxolaner',
  aliases: [],
  class: 'isoxazoline',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antiparasitic',
      routes: ['PO'],
      range: { value: range('2.5', '2.5', 'mg/kg'), ...label },
      interval: { value: { words: 'every month' }, ...label },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('11.3', 'mg'), divides: 'unknown' },
          { strength: quantity('28.3', 'mg'), divides: 'unknown' },
          { strength: quantity('68', 'mg'), divides: 'unknown' },
          { strength: quantity('136', 'mg'), divides: 'unknown' },
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
      exclusions: { value: [{ when: { kind: 'younger-than', months: 2 }, because: 'under 8 weeks' }], ...label },
    },
  ],
  none: [{ species: 'cat', why: 'no-dose-found', because: 'the formulary read has no row for cats', ...label }],
})
