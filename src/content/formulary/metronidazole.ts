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

const record = {
  sources: ['vet-record-open-antibiotics'],
  where: '15 mg/kg; the low end is remembered',
  known: 'read',
  strength: 'study',
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

export const metronidazole = drug({
  id: 'metronidazole',
  name: 'metronidazole',
  aliases: [],
  class: 'nitroimidazole',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('10', '15', 'mg/kg'), ...record, known: 'remembered' },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...record },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('200', 'mg'), divides: 'unknown' },
          { strength: quantity('250', 'mg'), divides: 'unknown' },
          { strength: quantity('400', 'mg'), divides: 'unknown' },
          { strength: quantity('500', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'over about 60 mg/kg a day, or for long, it harms balance' },
          { words: 'its own harm to balance hides the ear’s', when: { kind: 'any-of', words: ['vestibular-signs'] } },
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
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('10', '15', 'mg/kg'), ...medicine },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...medicine },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('200', 'mg'), divides: 'unknown' },
          { strength: quantity('250', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'bitter' },
          { words: 'its own harm to balance hides the ear’s', when: { kind: 'any-of', words: ['vestibular-signs'] } },
        ],
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
