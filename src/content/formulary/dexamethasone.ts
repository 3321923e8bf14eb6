import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const medicine = {
  sources: ['medicine-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const dexamethasone = drug({
  id: 'dexamethasone',
  name: 'dexamethasone',
  aliases: [],
  class: 'corticosteroid',
  groups: ['steroid'],
  doses: [
    {
      species: 'dog',
      use: 'steroid',
      routes: ['IV', 'IM'],
      range: { value: range('0.1', '0.2', 'mg/kg'), ...medicine },
      interval: { value: { words: 'once' }, ...medicine },
      stocks: { value: [{ strength: quantity('2', 'mg/mL') }, { strength: quantity('4', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'for a swollen throat after bulla surgery' },
          { words: 'about seven times as strong as prednisolone' },
          { words: 'raises blood sugar', when: { kind: 'any-of', words: ['diabetes'] } },
        ],
        ...medicine,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['fungal-infection'] }, because: 'a fungal infection' }],
        ...medicine,
      },
    },
    {
      species: 'cat',
      use: 'steroid',
      routes: ['IV', 'IM'],
      range: { value: range('0.1', '0.2', 'mg/kg'), ...medicine },
      interval: { value: { words: 'once' }, ...medicine },
      stocks: { value: [{ strength: quantity('2', 'mg/mL') }, { strength: quantity('4', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'for a swollen throat after bulla surgery' },
          { words: 'about seven times as strong as prednisolone' },
          { words: 'raises blood sugar', when: { kind: 'any-of', words: ['diabetes'] } },
        ],
        ...medicine,
      },
      exclusions: {
        value: [],
        ...medicine,
      },
    },
  ],
  none: [],
})
