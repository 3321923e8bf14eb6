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

const aaha = {
  sources: ['aaha-2023-allergic-skin'],
  where: 'table 4: 3 to 6 once a day',
  known: 'read',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const texts2 = {
  sources: ['dermatology-texts'],
  where: '5 twice a day',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'low',
  checked: '2026-11-25',
} as const

export const rifampicin = drug({
  id: 'rifampicin',
  name: 'rifampicin',
  aliases: ['rifampin'],
  class: 'rifamycin',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('3', '6', 'mg/kg'), ...aaha },
      otherRanges: [{ value: { ...range('5', '5', 'mg/kg'), words: 'twice a day' }, ...texts2 }],
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...aaha },
      maxCumulative: { value: { limit: quantity('10', 'mg/kg'), per: 'day', words: '10 mg/kg a day' }, ...texts2 },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('150', 'mg'), divides: 'unknown' },
          { strength: quantity('300', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'last line against resistant staphylococci, never alone without advice' },
          { words: 'liver values every week; red urine' },
        ],
        ...texts,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['hepatic-disease'] }, because: 'liver disease' }],
        ...texts,
      },
      neverByHand: ['without a culture'],
    },
  ],
  none: [
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'the formulary read has no row for cats',
      ...aaha,
    },
  ],
})
