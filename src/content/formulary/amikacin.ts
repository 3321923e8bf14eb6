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

const papich = {
  sources: ['papich-dose-poster'],
  where: 'dog 15 to 30, cat 10 to 14 mg/kg',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const amikacin = drug({
  id: 'amikacin',
  name: 'amikacin',
  aliases: [],
  class: 'aminoglycoside',
  groups: ['aminoglycoside'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['IV', 'IM', 'SC'],
      range: { value: range('15', '30', 'mg/kg'), ...papich },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...papich },
      maxCumulative: { value: { per: 'course', days: 10, words: '7 to 10 days' }, ...papich },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }, { strength: quantity('250', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'harms kidney, hearing and balance: ear patients are the worst candidates' },
          { words: 'creatinine and urine sediment before and during' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['renal-disease', 'dehydration'] },
            because: 'kidney disease or dehydration',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['IV', 'IM', 'SC'],
      range: { value: range('10', '14', 'mg/kg'), ...papich },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...papich },
      maxCumulative: { value: { per: 'course', days: 7, words: '7 days' }, ...papich },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }, { strength: quantity('250', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'harms kidney, hearing and balance: ear patients are the worst candidates' },
          { words: 'creatinine and urine sediment before and during' },
          { words: 'cats lose their balance more easily' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['renal-disease', 'dehydration'] },
            because: 'kidney disease or dehydration',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
