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

const handout = {
  sources: ['sa-anesthesia-drug-dosages-2022'],
  where: '0.01 to 0.02 mg/kg before anaesthesia',
  known: 'read',
  strength: 'handout',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const vein = {
  sources: ['anaesthesia-texts'],
  where: '0.005 to 0.01 mg/kg into a vein',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const glycopyrronium = drug({
  id: 'glycopyrronium',
  name: 'glycopyrronium',
  aliases: ['glycopyrrolate'],
  class: 'anticholinergic',
  groups: ['anticholinergic'],
  doses: [
    {
      species: 'dog',
      use: 'anticholinergic',
      routes: ['IV', 'IM'],
      range: { value: range('0.005', '0.01', 'mg/kg'), ...vein },
      otherRanges: [{ value: { ...range('0.01', '0.02', 'mg/kg'), words: 'before anaesthesia' }, ...handout }],
      interval: { value: { words: 'once, may repeat' }, ...vein },
      stocks: { value: [{ strength: quantity('0.2', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'for a slow heart with low pressure, as in work near the brainstem' },
          { words: 'the heart may slow first' },
          { words: 'less tear fluid: lubricate more, test tears later' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'all-of', words: ['hypertension', 'bradycardia'] },
            because: 'a slow heart under high pressure from an alpha-2 agonist',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'anticholinergic',
      routes: ['IV', 'IM'],
      range: { value: range('0.005', '0.01', 'mg/kg'), ...vein },
      otherRanges: [{ value: { ...range('0.01', '0.02', 'mg/kg'), words: 'before anaesthesia' }, ...handout }],
      interval: { value: { words: 'once, may repeat' }, ...vein },
      stocks: { value: [{ strength: quantity('0.2', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'for a slow heart with low pressure, as in work near the brainstem' },
          { words: 'the heart may slow first' },
          { words: 'less tear fluid: lubricate more, test tears later' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'all-of', words: ['hypertension', 'bradycardia'] },
            because: 'a slow heart under high pressure from an alpha-2 agonist',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
