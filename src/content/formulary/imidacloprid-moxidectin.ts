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
  sources: ['cfr-21-524-1146'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const catLabel = {
  sources: ['cfr-21-524-1146'],
  where: 'strengths read; the cat’s mg/kg is remembered',
  known: 'remembered',
  strength: 'label',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

export const imidaclopridMoxidectin = drug({
  id: 'imidacloprid-moxidectin',
  name: 'imidacloprid and moxidectin',
  aliases: ['imidacloprid + moxidectin'],
  class: 'neonicotinoid with macrocyclic lactone',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antiparasitic',
      routes: ['topical'],
      range: { value: range('2.5', '2.5', 'mg/kg'), ...label },
      interval: { value: { words: 'every month' }, ...label },
      stocks: {
        value: [{ strength: quantity('25', 'mg/mL'), words: 'moxidectin, with 100 mg/mL imidacloprid' }],
        ...products,
      },
      cautions: {
        value: [
          { words: 'the dose is the moxidectin; imidacloprid comes to 10 mg/kg' },
          {
            words: 'licking it is dangerous with changed ABCB1',
            when: { kind: 'any-of', words: ['abcb1-carrier', 'abcb1-mutant'] },
          },
        ],
        ...label,
      },
      exclusions: { value: [], ...label },
      neverByHand: ['on a dog with changed ABCB1 that can lick it'],
    },
    {
      species: 'cat',
      use: 'antiparasitic',
      routes: ['topical'],
      range: { value: range('1', '1', 'mg/kg'), ...catLabel },
      interval: { value: { words: 'every month' }, ...catLabel },
      stocks: {
        value: [{ strength: quantity('10', 'mg/mL'), words: 'moxidectin, with 100 mg/mL imidacloprid' }],
        ...products,
      },
      cautions: { value: [{ words: 'for ear mites' }, { words: 'the dose is the moxidectin' }], ...catLabel },
      exclusions: { value: [], ...catLabel },
      neverByHand: ['the dog’s strength on a cat'],
    },
  ],
  none: [],
})
