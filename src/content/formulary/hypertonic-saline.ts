import { drug, range } from '#core/formulary/drug.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const aaha = {
  sources: ['aaha-2024-fluids'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

export const hypertonicSaline = drug({
  id: 'hypertonic-saline',
  name: 'hypertonic saline',
  aliases: ['hypertonic saline 7.2-7.5%', 'sodium chloride 7.2 %'],
  class: 'hypertonic fluid',
  groups: ['hypertonic-fluid'],
  doses: [
    {
      species: 'dog',
      use: 'fluid_bolus',
      routes: ['IV'],
      range: { value: range('3', '5', 'mL/kg'), ...aaha },
      interval: { value: { words: 'once, over 5 to 10 min' }, ...aaha },
      stocks: { value: [{ words: '7.2 to 7.5 %' }], ...products },
      cautions: { value: [{ words: 'a small volume for rescue; isotonic fluid follows' }], ...aaha },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['dehydration'] },
            because: 'dehydration: it draws water that is not there',
          },
          { when: { kind: 'any-of', words: ['active-bleeding'] }, because: 'bleeding that nobody controls' },
        ],
        ...aaha,
      },
      neverByHand: ['with high sodium'],
    },
    {
      species: 'cat',
      use: 'fluid_bolus',
      routes: ['IV'],
      range: { value: range('2', '3', 'mL/kg'), ...aaha },
      interval: { value: { words: 'once, over 10 min' }, ...aaha },
      stocks: { value: [{ words: '7.2 to 7.5 %' }], ...products },
      cautions: { value: [{ words: 'a small volume for rescue; isotonic fluid follows' }], ...aaha },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['dehydration'] },
            because: 'dehydration: it draws water that is not there',
          },
          { when: { kind: 'any-of', words: ['active-bleeding'] }, because: 'bleeding that nobody controls' },
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'hypertrophic-cardiomyopathy'] },
            because: 'heart disease',
          },
        ],
        ...aaha,
      },
      neverByHand: ['with high sodium'],
    },
  ],
  none: [],
})
