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

const msd = {
  sources: ['msd-cpr-table-earlier'],
  where: '0.01 to 0.02 mg/kg',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const recover = {
  sources: ['fletcher-2012'],
  where: '0.01 mg/kg',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const flumazenil = drug({
  id: 'flumazenil',
  name: 'flumazenil',
  aliases: [],
  class: 'benzodiazepine antagonist',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'reversal',
      routes: ['IV'],
      range: { value: range('0.01', '0.02', 'mg/kg'), ...msd },
      otherRanges: [{ value: { ...range('0.01', '0.01', 'mg/kg'), words: '2012 guideline' }, ...recover }],
      interval: { value: { words: 'once; may be repeated every hour' }, ...msd },
      stocks: { value: [{ strength: quantity('0.1', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'may let a seizure through', when: { kind: 'any-of', words: ['seizure-disorder'] } }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'reversal',
      routes: ['IV'],
      range: { value: range('0.01', '0.02', 'mg/kg'), ...msd },
      otherRanges: [{ value: { ...range('0.01', '0.01', 'mg/kg'), words: '2012 guideline' }, ...recover }],
      interval: { value: { words: 'once; may be repeated every hour' }, ...msd },
      stocks: { value: [{ strength: quantity('0.1', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'may let a seizure through', when: { kind: 'any-of', words: ['seizure-disorder'] } }],
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
