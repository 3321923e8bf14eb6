import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const dermatology = {
  sources: ['dermatology-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const medicine = {
  sources: ['medicine-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const prednisolone = drug({
  id: 'prednisolone',
  name: 'prednisolone',
  aliases: [],
  class: 'corticosteroid',
  groups: ['steroid'],
  doses: [
    {
      species: 'dog',
      use: 'steroid',
      routes: ['PO'],
      range: { value: range('0.5', '1', 'mg/kg'), ...dermatology },
      interval: { value: { words: 'every 12 to 24 h, then taper', hours: ['12', '24'] }, ...dermatology },
      maxCumulative: { value: { limit: quantity('2', 'mg/kg'), per: 'day', words: '2 mg/kg a day' }, ...dermatology },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('1', 'mg'), divides: 'unknown' },
          { strength: quantity('5', 'mg'), divides: 'unknown' },
          { strength: quantity('20', 'mg'), divides: 'unknown' },
          { strength: quantity('25', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'to open a swollen canal before surgery' },
          { words: 'slows wound healing; thirst' },
          { words: 'raises blood sugar', when: { kind: 'any-of', words: ['diabetes'] } },
        ],
        ...dermatology,
      },
      exclusions: {
        value: [],
        ...dermatology,
      },
    },
    {
      species: 'cat',
      use: 'steroid',
      routes: ['PO'],
      range: { value: range('1', '2', 'mg/kg'), ...medicine },
      interval: { value: { words: 'every 24 h, then taper', hours: ['24', '24'] }, ...medicine },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('1', 'mg'), divides: 'unknown' },
          { strength: quantity('5', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'prednisolone, not prednisone, in cats' },
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
