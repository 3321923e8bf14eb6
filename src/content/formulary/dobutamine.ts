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

const rosati = {
  sources: ['rosati-2007', 'lukasik-2015'],
  where: '1 to 8 studied in the first, 5 to 20 printed in the second',
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
  sources: ['pascoe-2006'],
  where: '2.5 to 20 studied without a rise in pressure; the cat’s upper end is remembered',
  known: 'read',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const dobutamine = drug({
  id: 'dobutamine',
  name: 'dobutamine',
  aliases: [],
  class: 'catecholamine',
  groups: ['vasopressor'],
  doses: [
    {
      species: 'dog',
      use: 'vasopressor',
      routes: ['IV'],
      range: { value: range('2', '10', 'ug/kg/min'), ...rosati },
      otherRanges: [{ value: { ...range('2', '20', 'ug/kg/min'), words: 'teaching page' }, ...wingfield }],
      interval: { value: { words: 'continuous' }, ...rosati },
      maxSingle: { value: { limit: quantity('20', 'ug/kg/min') }, ...rosati },
      stocks: { value: [{ strength: quantity('12.5', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'lifts output more than pressure' }],
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
      range: { value: range('1', '5', 'ug/kg/min'), ...pascoe, known: 'remembered' },
      interval: { value: { words: 'continuous' }, ...pascoe },
      stocks: { value: [{ strength: quantity('12.5', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'did not raise pressure in cats; fits with long use' }],
        ...texts,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['hypertrophic-cardiomyopathy'] }, because: 'a thick heart muscle' }],
        ...texts,
      },
    },
  ],
  none: [],
})
