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
  where: '0.2 to 2; the low start is remembered',
  known: 'read',
  strength: 'handout',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const norepinephrine = drug({
  id: 'norepinephrine',
  name: 'norepinephrine',
  aliases: ['noradrenaline'],
  class: 'catecholamine',
  groups: ['vasopressor'],
  doses: [
    {
      species: 'dog',
      use: 'vasopressor',
      routes: ['IV'],
      range: { value: range('0.05', '2', 'ug/kg/min'), ...lukasik, known: 'remembered' },
      interval: { value: { words: 'continuous' }, ...lukasik },
      stocks: { value: [{ strength: quantity('1', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'narrows vessels: after volume, into a large vein' }],
        ...texts,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['hypovolaemia'] }, because: 'blood volume is not restored yet' }],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'vasopressor',
      routes: ['IV'],
      range: { value: range('0.05', '1', 'ug/kg/min'), ...lukasik, known: 'remembered' },
      interval: { value: { words: 'continuous' }, ...lukasik },
      stocks: { value: [{ strength: quantity('1', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'narrows vessels: after volume, into a large vein' }],
        ...texts,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['hypovolaemia'] }, because: 'blood volume is not restored yet' }],
        ...texts,
      },
    },
  ],
  none: [],
})
