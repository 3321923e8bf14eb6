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
  where: '1 to 5; the low end is remembered',
  known: 'read',
  strength: 'handout',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const pascoe = {
  sources: ['pascoe-2006'],
  where: '0.125 to 2',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const phenylephrine = drug({
  id: 'phenylephrine',
  name: 'phenylephrine',
  aliases: [],
  class: 'alpha-1 agonist',
  groups: ['vasopressor'],
  doses: [
    {
      species: 'dog',
      use: 'vasopressor',
      routes: ['IV'],
      range: {
        value: range('0.5', '3', 'ug/kg/min'),
        ...lukasik,
        where: 'printed as 1 to 5; both ends here are remembered',
        known: 'remembered',
      },
      otherRanges: [{ value: { ...range('1', '5', 'ug/kg/min'), words: 'as printed' }, ...lukasik, where: '1 to 5' }],
      interval: { value: { words: 'continuous' }, ...lukasik },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'the heart slows, output falls' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'vasopressor',
      routes: ['IV'],
      range: { value: range('0.125', '2', 'ug/kg/min'), ...pascoe },
      interval: { value: { words: 'continuous' }, ...pascoe },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'the choice with a thick heart muscle that obstructs' }],
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
