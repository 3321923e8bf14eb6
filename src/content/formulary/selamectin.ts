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
  sources: ['cfr-21-524-2098'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const selamectin = drug({
  id: 'selamectin',
  name: 'selamectin',
  aliases: [],
  class: 'macrocyclic lactone',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antiparasitic',
      routes: ['topical'],
      range: { value: range('6', '6', 'mg/kg'), ...label },
      interval: { value: { words: 'every month' }, ...label },
      stocks: { value: [{ strength: quantity('60', 'mg/mL') }, { strength: quantity('120', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'for ear mites' }, { words: 'the label dose is safe with changed ABCB1' }],
        ...label,
      },
      exclusions: { value: [{ when: { kind: 'younger-than', months: 1.5 }, because: 'under 6 weeks' }], ...label },
      neverByHand: ['in an open ear or on a fresh wound'],
    },
    {
      species: 'cat',
      use: 'antiparasitic',
      routes: ['topical'],
      range: { value: range('6', '6', 'mg/kg'), ...label },
      interval: { value: { words: 'every month' }, ...label },
      stocks: { value: [{ strength: quantity('60', 'mg/mL') }], ...products },
      cautions: { value: [{ words: 'for ear mites' }], ...label },
      exclusions: { value: [{ when: { kind: 'younger-than', months: 2 }, because: 'under 8 weeks' }], ...label },
      neverByHand: ['in an open ear or on a fresh wound'],
    },
  ],
  none: [],
})
