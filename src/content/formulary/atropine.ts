import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const handout = {
  sources: ['sa-anesthesia-drug-dosages-2022'],
  where: '0.02 to 0.04 mg/kg',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const cpr = {
  sources: ['merck-cpr-table', 'msd-cpr-table-earlier'],
  where: '0.05 once in the current table, 0.04 in the earlier one',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const old = {
  sources: ['fletcher-2012'],
  where: '0.04, may be repeated',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const atropine = drug({
  id: 'atropine',
  name: 'atropine',
  aliases: [],
  class: 'anticholinergic',
  groups: ['anticholinergic'],
  doses: [
    {
      species: 'dog',
      use: 'anticholinergic',
      routes: ['IV', 'IM'],
      range: { value: range('0.02', '0.04', 'mg/kg'), ...handout },
      interval: { value: { words: 'once, may repeat' }, ...handout },
      stocks: {
        value: [
          { strength: quantity('0.54', 'mg/mL') },
          { strength: quantity('0.6', 'mg/mL') },
          { strength: quantity('0.4', 'mg/mL') },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'less tear fluid for up to a day: lubricate more, test tears later' },
          { words: 'a fast rhythm gets faster', when: { kind: 'any-of', words: ['tachyarrhythmia'] } },
        ],
        ...handout,
      },
      exclusions: {
        value: [],
        ...handout,
      },
    },
    {
      species: 'dog',
      use: 'emergency',
      routes: ['IV', 'IO'],
      range: { value: range('0.04', '0.05', 'mg/kg'), ...cpr },
      otherRanges: [{ value: { ...range('0.04', '0.04', 'mg/kg'), words: 'may be repeated (2012)' }, ...old }],
      interval: { value: { words: 'once, early' }, ...cpr },
      stocks: {
        value: [
          { strength: quantity('0.54', 'mg/mL') },
          { strength: quantity('0.4', 'mg/mL') },
          { strength: quantity('0.6', 'mg/mL') },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'arrest with high vagal tone; once, early' }],
        ...cpr,
      },
      exclusions: {
        value: [],
        ...cpr,
      },
    },
    {
      species: 'cat',
      use: 'anticholinergic',
      routes: ['IV', 'IM'],
      range: { value: range('0.02', '0.04', 'mg/kg'), ...handout },
      interval: { value: { words: 'once, may repeat' }, ...handout },
      stocks: {
        value: [
          { strength: quantity('0.54', 'mg/mL') },
          { strength: quantity('0.6', 'mg/mL') },
          { strength: quantity('0.4', 'mg/mL') },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'less tear fluid for up to a day: lubricate more, test tears later' },
          { words: 'a fast rhythm gets faster', when: { kind: 'any-of', words: ['tachyarrhythmia'] } },
        ],
        ...handout,
      },
      exclusions: {
        value: [],
        ...handout,
      },
    },
    {
      species: 'cat',
      use: 'emergency',
      routes: ['IV', 'IO'],
      range: { value: range('0.04', '0.05', 'mg/kg'), ...cpr },
      otherRanges: [{ value: { ...range('0.04', '0.04', 'mg/kg'), words: 'may be repeated (2012)' }, ...old }],
      interval: { value: { words: 'once, early' }, ...cpr },
      stocks: {
        value: [
          { strength: quantity('0.54', 'mg/mL') },
          { strength: quantity('0.4', 'mg/mL') },
          { strength: quantity('0.6', 'mg/mL') },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'arrest with high vagal tone; once, early' }],
        ...cpr,
      },
      exclusions: {
        value: [],
        ...cpr,
      },
    },
  ],
  none: [],
})
