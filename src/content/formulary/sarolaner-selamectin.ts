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
  sources: ['cfr-21-524-2099'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const sarolanerSelamectin = drug({
  id: 'sarolaner-selamectin',
  name: 'sarolaner and selamectin',
  aliases: ['sarolaner + selamectin'],
  class: 'isoxazoline with macrocyclic lactone',
  groups: [],
  doses: [
    {
      species: 'cat',
      use: 'antiparasitic',
      routes: ['topical'],
      range: { value: range('6', '6', 'mg/kg'), ...label },
      interval: { value: { words: 'every month' }, ...label },
      stocks: {
        value: [{ strength: quantity('60', 'mg/mL'), words: 'selamectin, with 10 mg/mL sarolaner' }],
        ...products,
      },
      cautions: {
        value: [{ words: 'for ear mites' }, { words: 'the dose is the selamectin; sarolaner comes to 1 mg/kg' }],
        ...label,
      },
      exclusions: { value: [{ when: { kind: 'younger-than', months: 2 }, because: 'under 8 weeks' }], ...label },
    },
  ],
  none: [{ species: 'dog', why: 'no-dose-found', because: 'the mixture is the cat’s product', ...label }],
})
