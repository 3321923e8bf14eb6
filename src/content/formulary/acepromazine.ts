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
  where: '0.01 to 0.05 mg/kg, at most 3 mg',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const bsava = {
  sources: ['bsava-sedation-protocols'],
  where: '0.01 to 0.03 mg/kg, at most 1 mg per patient',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const label = {
  sources: ['canadian-acepromazine-label'],
  where: 'before anaesthesia 0.03 to 0.2 mg/kg (dog, at most 3 mg); cat sedation 0.05 to 0.11, at most 1 mg',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const vetTimes = {
  sources: ['vet-times-sedation-overview'],
  where: 'combination table, 10 to 50 ug/kg',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const wsu = {
  sources: ['wsu-problem-drugs'],
  where: '25 % less with one changed copy, 30 to 50 % less with two',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const acepromazine = drug({
  id: 'acepromazine',
  name: 'acepromazine',
  aliases: ['ACP'],
  class: 'phenothiazine',
  groups: ['phenothiazine'],
  doses: [
    {
      species: 'dog',
      use: 'premed',
      routes: ['IM', 'IV', 'SC'],
      range: { value: range('0.01', '0.05', 'mg/kg'), ...handout },
      otherRanges: [
        { value: { ...range('0.01', '0.03', 'mg/kg'), words: 'at most 1 mg per patient' }, ...bsava },
        { value: { ...range('0.03', '0.2', 'mg/kg'), words: 'label, at most 3 mg' }, ...label },
      ],
      interval: { value: { words: 'once' }, ...handout },
      maxSingle: { value: { limit: quantity('3', 'mg'), words: 'another source stops at 1 mg' }, ...handout },
      stocks: {
        value: [
          { strength: quantity('10', 'mg/mL') },
          { strength: quantity('2', 'mg/mL') },
          { strength: quantity('1', 'mg/mL') },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'lowers pressure, takes no pain away, cannot be reversed' },
          { words: 'over 1 mg in all is more than one source allows' },
          { words: 'the low end', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: '0.005 to 0.01 mg/kg in Boxers', when: { kind: 'any-of', words: ['boxer'] } },
          { words: '25 % less with one changed copy of ABCB1', when: { kind: 'any-of', words: ['abcb1-carrier'] } },
          {
            words: '30 to 50 % less with two changed copies of ABCB1',
            when: { kind: 'any-of', words: ['abcb1-mutant'] },
          },
        ],
        ...wsu,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'shock', 'dehydration'] },
            because: 'low blood volume: it widens vessels',
          },
          { when: { kind: 'any-of', words: ['cardiovascular-disease'] }, because: 'a failing heart' },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'premed',
      routes: ['IM', 'IV', 'SC'],
      range: { value: range('0.01', '0.05', 'mg/kg'), ...vetTimes },
      otherRanges: [{ value: { ...range('0.05', '0.11', 'mg/kg'), words: 'label sedation' }, ...label }],
      interval: { value: { words: 'once' }, ...vetTimes },
      maxSingle: { value: { limit: quantity('1', 'mg') }, ...label },
      stocks: {
        value: [
          { strength: quantity('10', 'mg/mL') },
          { strength: quantity('2', 'mg/mL') },
          { strength: quantity('1', 'mg/mL') },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'lowers pressure and temperature, takes no pain away, cannot be reversed' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'shock', 'dehydration'] },
            because: 'low blood volume: it widens vessels',
          },
          { when: { kind: 'any-of', words: ['cardiovascular-disease'] }, because: 'a failing heart' },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
