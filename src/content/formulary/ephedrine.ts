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

const chen = {
  sources: ['chen-2007'],
  where: '0.2 mg/kg lasted under 5 min, a second dose added nothing; the low end is remembered',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const ephedrine = drug({
  id: 'ephedrine',
  name: 'ephedrine',
  aliases: [],
  class: 'indirect sympathomimetic',
  groups: ['vasopressor'],
  doses: [
    {
      species: 'dog',
      use: 'vasopressor',
      routes: ['IV'],
      range: { value: range('0.1', '0.2', 'mg/kg'), ...chen, known: 'remembered' },
      interval: { value: { words: 'once, repeated once' }, ...chen },
      stocks: {
        value: [
          { strength: quantity('50', 'mg/mL') },
          { strength: quantity('30', 'mg/mL') },
          { strength: quantity('5', 'mg/mL'), words: 'diluted' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'acts for minutes; in the dog trial under 5, and a second dose added nothing' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['tachyarrhythmia', 'hypertension', 'mao-inhibitor-treatment'] },
            because: 'a fast rhythm, high pressure, or an MAO inhibitor',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'vasopressor',
      routes: ['IV'],
      range: { value: range('0.05', '0.1', 'mg/kg'), ...texts },
      interval: { value: { words: 'once, repeated once' }, ...texts },
      stocks: {
        value: [
          { strength: quantity('50', 'mg/mL') },
          { strength: quantity('30', 'mg/mL') },
          { strength: quantity('5', 'mg/mL'), words: 'diluted' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'acts for minutes' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['tachyarrhythmia', 'hypertrophic-cardiomyopathy'] },
            because: 'a fast rhythm, or a thick heart muscle that obstructs',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
