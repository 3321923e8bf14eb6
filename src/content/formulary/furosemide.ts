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

const emergency = {
  sources: ['standard-emergency-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const furosemide = drug({
  id: 'furosemide',
  name: 'furosemide',
  aliases: ['frusemide'],
  class: 'loop diuretic',
  groups: ['loop-diuretic'],
  doses: [
    {
      species: 'dog',
      use: 'emergency',
      routes: ['IV', 'IM'],
      range: { value: range('1', '2', 'mg/kg'), ...emergency },
      interval: { value: { words: 'every 1 to 6 h', hours: ['1', '6'] }, ...emergency },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }, { strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'for too much fluid' }, { words: 'with an aminoglycoside it takes the hearing' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'urinary-obstruction'] },
            because: 'low blood volume, or no urine',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'emergency',
      routes: ['IV', 'IM'],
      range: { value: range('0.5', '2', 'mg/kg'), ...emergency },
      interval: { value: { words: 'every 1 to 6 h', hours: ['1', '6'] }, ...emergency },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }, { strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'for too much fluid' }, { words: 'with an aminoglycoside it takes the hearing' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'urinary-obstruction'] },
            because: 'low blood volume, or no urine',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
