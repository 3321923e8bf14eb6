import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const rates = {
  sources: ['aaha-aafp-2013-fluids', 'aaha-2024-fluids'],
  where: 'anaesthetic-rate table: dog 5, cat 3 mL/kg/h, both under 10; the 2024 abstract repeats lower rates',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const shock = {
  sources: ['aaha-aafp-2013-fluids'],
  where: 'shock volumes: dog 80 to 90, cat 50 to 55 mL/kg',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const bolus = {
  sources: ['aaha-2020-hypotension'],
  where: '5 to 20 mL/kg',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const catBolus = {
  sources: ['aaha-2020-hypotension', 'aaha-2024-fluids'],
  where: '5 to 20 for dog and cat; the cautious 5 to 10 for cats is remembered',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const practice = {
  sources: ['tvp-2018-fluids'],
  where: 'page 73: dog 10 to 20 per 15 to 30 min, cat 10 to 15',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

export const balancedCrystalloid = drug({
  id: 'balanced-crystalloid',
  name: 'balanced crystalloid',
  aliases: ['balanced isotonic crystalloid'],
  class: 'isotonic fluid',
  groups: ['crystalloid'],
  doses: [
    {
      species: 'dog',
      use: 'fluid',
      routes: ['IV'],
      qualifier: 'under anaesthesia',
      range: { value: range('5', '5', 'mL/kg/h'), ...rates },
      interval: {
        value: { words: 'from the start of anaesthesia; a quarter less each hour, down to maintenance, while stable' },
        ...rates,
      },
      maxSingle: { value: { limit: quantity('10', 'mL/kg/h') }, ...rates },
      stocks: { value: [{ words: 'Hartmann, Ringer acetate and the like' }], ...products },
      cautions: {
        value: [
          { words: 'warm it' },
          { words: 'the rate of a later hour: quiet-ear calc, anaesthetic_rate_hour' },
          {
            words: 'less with heart or kidney disease',
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'renal-disease'] },
          },
        ],
        ...rates,
      },
      exclusions: { value: [], ...rates },
      neverByHand: ['in a failing heart or with too much fluid aboard'],
    },
    {
      species: 'cat',
      use: 'fluid',
      routes: ['IV'],
      qualifier: 'under anaesthesia',
      range: { value: range('3', '3', 'mL/kg/h'), ...rates },
      interval: {
        value: { words: 'from the start of anaesthesia; a quarter less each hour, down to maintenance, while stable' },
        ...rates,
      },
      maxSingle: { value: { limit: quantity('10', 'mL/kg/h') }, ...rates },
      stocks: { value: [{ words: 'Hartmann, Ringer acetate and the like' }], ...products },
      cautions: {
        value: [
          { words: 'cats fill up easily: listen to the chest, weigh' },
          { words: 'warm it' },
          { words: 'the rate of a later hour: quiet-ear calc, anaesthetic_rate_hour' },
        ],
        ...rates,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'hypertrophic-cardiomyopathy'] },
            because: 'heart disease',
          },
        ],
        ...rates,
      },
      neverByHand: ['with too much fluid aboard'],
    },
    {
      species: 'dog',
      use: 'fluid',
      routes: ['IV'],
      qualifier: 'maintenance',
      range: { value: range('2', '6', 'mL/kg/h'), ...rates, where: 'maintenance, rule of thumb' },
      interval: { value: { words: 'continuous' }, ...rates },
      maxSingle: { value: { limit: quantity('10', 'mL/kg/h') }, ...rates },
      stocks: { value: [], ...rates },
      cautions: { value: [{ words: 'weigh every day; count what runs in with drugs' }], ...rates },
      exclusions: { value: [], ...rates },
    },
    {
      species: 'cat',
      use: 'fluid',
      routes: ['IV'],
      qualifier: 'maintenance',
      range: { value: range('2', '3', 'mL/kg/h'), ...rates, where: 'maintenance, rule of thumb' },
      interval: { value: { words: 'continuous' }, ...rates },
      maxSingle: { value: { limit: quantity('10', 'mL/kg/h') }, ...rates },
      stocks: { value: [], ...rates },
      cautions: { value: [{ words: 'weigh every day; count what runs in with drugs' }], ...rates },
      exclusions: { value: [], ...rates },
    },
    {
      species: 'dog',
      use: 'fluid_bolus',
      routes: ['IV'],
      range: { value: range('5', '20', 'mL/kg'), ...bolus },
      otherRanges: [{ value: { ...range('10', '20', 'mL/kg'), words: 'over 15 to 30 min' }, ...practice }],
      interval: { value: { words: 'over 15 to 20 min, then judged again' }, ...bolus },
      maxCumulative: { value: { per: 'animal', words: 'one blood volume, 80 to 90 mL/kg' }, ...shock },
      stocks: { value: [{ words: 'Hartmann, Ringer acetate and the like' }], ...products },
      cautions: {
        value: [
          { words: 'for low pressure or blood loss' },
          { words: 'three parts for one part of blood lost, and only for a short time' },
        ],
        ...bolus,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['cardiovascular-disease'] }, because: 'heart failure' }],
        ...bolus,
      },
    },
    {
      species: 'cat',
      use: 'fluid_bolus',
      routes: ['IV'],
      range: { value: range('5', '10', 'mL/kg'), ...catBolus },
      otherRanges: [
        { value: { ...range('10', '15', 'mL/kg'), words: 'over 15 to 30 min' }, ...practice },
        { value: { ...range('5', '20', 'mL/kg'), words: 'guideline page, dog and cat together' }, ...bolus },
      ],
      interval: { value: { words: 'over 15 to 20 min, then judged again' }, ...catBolus },
      maxCumulative: { value: { per: 'animal', words: 'one blood volume, 50 to 60 mL/kg' }, ...shock },
      stocks: { value: [{ words: 'Hartmann, Ringer acetate and the like' }], ...products },
      cautions: { value: [{ words: 'slower and smaller than in a dog' }], ...catBolus },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'hypertrophic-cardiomyopathy'] },
            because: 'heart disease',
          },
        ],
        ...catBolus,
      },
    },
  ],
  none: [],
})
