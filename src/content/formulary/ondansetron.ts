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

const medicine = {
  sources: ['medicine-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const ondansetron = drug({
  id: 'ondansetron',
  name: 'ondansetron',
  aliases: [],
  class: '5-HT3 antagonist',
  groups: ['antiemetic'],
  doses: [
    {
      species: 'dog',
      use: 'antiemetic',
      routes: ['IV', 'PO'],
      range: { value: range('0.2', '0.5', 'mg/kg'), ...medicine },
      interval: { value: { words: 'every 8 to 12 h', hours: ['8', '12'] }, ...medicine },
      stocks: { value: [{ strength: quantity('2', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('4', 'mg'), divides: 'unknown' },
          { strength: quantity('8', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'listed by some for ABCB1', when: { kind: 'any-of', words: ['abcb1-carrier', 'abcb1-mutant'] } },
          { words: 'lengthens the QT interval' },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antiemetic',
      routes: ['IV', 'PO'],
      range: { value: range('0.1', '0.5', 'mg/kg'), ...medicine },
      interval: { value: { words: 'every 8 to 12 h', hours: ['8', '12'] }, ...medicine },
      stocks: { value: [{ strength: quantity('2', 'mg/mL') }], ...products },
      tablets: {
        value: [{ strength: quantity('4', 'mg'), divides: 'unknown' }],
        ...products,
      },
      cautions: {
        value: [{ words: 'lengthens the QT interval' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
  ],
  none: [],
})
