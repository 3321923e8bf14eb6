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
  sources: ['cfr-21-524-1001'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const fluralanerMoxidectin = drug({
  id: 'fluralaner-moxidectin',
  name: 'fluralaner and moxidectin',
  aliases: ['fluralaner + moxidectin'],
  class: 'isoxazoline with macrocyclic lactone',
  groups: [],
  doses: [
    {
      species: 'cat',
      use: 'antiparasitic',
      routes: ['topical'],
      range: { value: range('40', '40', 'mg/kg'), ...label },
      interval: { value: { words: 'every 8 weeks' }, ...label },
      stocks: {
        value: [{ strength: quantity('280', 'mg/mL'), words: 'fluralaner, with 14 mg/mL moxidectin' }],
        ...products,
      },
      cautions: { value: [{ words: 'the dose is the least of fluralaner' }], ...label },
      exclusions: {
        value: [
          { when: { kind: 'younger-than', months: 6 }, because: 'under 6 months' },
          { when: { kind: 'lighter-than', weight: quantity('1.2', 'kg') }, because: 'under 1.2 kg' },
        ],
        ...label,
      },
    },
  ],
  none: [{ species: 'dog', why: 'no-dose-found', because: 'the mixture is the cat’s product', ...label }],
})
