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

const lukasik = {
  sources: ['lukasik-2015'],
  where: '5 to 20',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const chen = {
  sources: ['chen-2007'],
  where: '5 failed, 10 worked',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const wingfield = {
  sources: ['wingfield-cri-csu'],
  where: '2 to 20',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const pascoe = {
  sources: ['pascoe-2006', 'lukasik-2015'],
  where: '2.5 to 20 studied in the first',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const dopamine = drug({
  id: 'dopamine',
  name: 'dopamine',
  aliases: [],
  class: 'catecholamine',
  groups: ['vasopressor'],
  doses: [
    {
      species: 'dog',
      use: 'vasopressor',
      routes: ['IV'],
      range: { value: range('5', '20', 'ug/kg/min'), ...lukasik },
      otherRanges: [
        { value: { ...range('10', '10', 'ug/kg/min'), words: 'worked in the trial where 5 failed' }, ...chen },
        { value: { ...range('2', '20', 'ug/kg/min'), words: 'teaching page' }, ...wingfield },
      ],
      interval: { value: { words: 'continuous' }, ...lukasik },
      stocks: { value: [{ strength: quantity('40', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: '5 often fails, 10 works' }, { words: 'never beside the vein; keep from light and alkali' }],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['hypovolaemia'] }, because: 'blood volume is not restored yet' },
          { when: { kind: 'any-of', words: ['tachyarrhythmia'] }, because: 'a fast rhythm' },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'vasopressor',
      routes: ['IV'],
      range: { value: range('5', '15', 'ug/kg/min'), ...pascoe },
      interval: { value: { words: 'continuous' }, ...pascoe },
      stocks: { value: [{ strength: quantity('40', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'raised pressure best in the trial' },
          { words: 'never beside the vein; keep from light and alkali' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['hypovolaemia'] }, because: 'blood volume is not restored yet' },
          {
            when: { kind: 'any-of', words: ['hypertrophic-cardiomyopathy'] },
            because: 'a thick heart muscle that obstructs',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
