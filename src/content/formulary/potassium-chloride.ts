import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const texts = {
  sources: ['anaesthesia-texts'],
  where: 'standard maximum 0.5 mmol/kg/h',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const potassiumChloride = drug({
  id: 'potassium-chloride',
  name: 'potassium chloride',
  aliases: [],
  class: 'electrolyte',
  groups: ['potassium'],
  doses: [
    {
      species: 'dog',
      use: 'fluid',
      routes: ['IV'],
      range: { value: range('0.05', '0.5', 'mmol/kg/h'), ...texts },
      interval: { value: { words: 'continuous, in the fluid bag' }, ...texts },
      maxSingle: { value: { limit: quantity('0.5', 'mmol/kg/h'), words: 'the usual most' }, ...texts },
      stocks: {
        value: [
          { strength: quantity('2', 'mmol/mL'), words: 'to be diluted into the bag', neverUndiluted: true },
          { strength: quantity('1', 'mmol/mL'), words: 'to be diluted into the bag', neverUndiluted: true },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'mix the bag well: potassium sinks to the outlet' },
          { words: 'the strength that runs is the bag’s, not the bottle’s' },
        ],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['as a bolus, or undiluted into a vein: the heart stops'],
    },
    {
      species: 'cat',
      use: 'fluid',
      routes: ['IV'],
      range: { value: range('0.05', '0.5', 'mmol/kg/h'), ...texts },
      interval: { value: { words: 'continuous, in the fluid bag' }, ...texts },
      maxSingle: { value: { limit: quantity('0.5', 'mmol/kg/h'), words: 'the usual most' }, ...texts },
      stocks: {
        value: [
          { strength: quantity('2', 'mmol/mL'), words: 'to be diluted into the bag', neverUndiluted: true },
          { strength: quantity('1', 'mmol/mL'), words: 'to be diluted into the bag', neverUndiluted: true },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'mix the bag well: potassium sinks to the outlet' },
          { words: 'the strength that runs is the bag’s, not the bottle’s' },
        ],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['as a bolus, or undiluted into a vein: the heart stops'],
    },
  ],
  none: [],
})
