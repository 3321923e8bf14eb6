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

const us = {
  sources: ['cfr-21-520-1310'],
  where: '1.25 to 2.5 mg/lb',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const uk = {
  sources: ['marbofloxacin-uk-spc'],
  where: '2 mg/kg',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const textbook = {
  sources: ['small-animal-internal-medicine-6'],
  where: 'table 92.1',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const marbofloxacin = drug({
  id: 'marbofloxacin',
  name: 'marbofloxacin',
  aliases: [],
  class: 'fluoroquinolone',
  groups: ['fluoroquinolone'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('2.75', '5.5', 'mg/kg'), ...us },
      otherRanges: [{ value: { ...range('2', '2', 'mg/kg'), words: 'UK label' }, ...uk }],
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('5', 'mg'), divides: 'unknown' },
          { strength: quantity('20', 'mg'), divides: 'unknown' },
          { strength: quantity('25', 'mg'), divides: 'unknown' },
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('80', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
          { strength: quantity('200', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'keep for what a culture asks for' },
          { words: '2 h apart from aluminium, calcium, magnesium or iron by mouth' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'younger-than', months: 12 }, because: 'under 12 months: growing cartilage' },
          {
            when: { kind: 'younger-than', months: 18, only: 'giant-breed' },
            because: 'giant breeds under 18 months: growing cartilage',
          },
          {
            when: { kind: 'any-of', words: ['quinolone-resistance', 'quinolone-hypersensitivity'] },
            because: 'known resistance or hypersensitivity to quinolones',
          },
        ],
        ...us,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('2.75', '5.5', 'mg/kg'), ...us },
      otherRanges: [
        { value: { ...range('2', '2', 'mg/kg'), words: 'UK label' }, ...uk },
        { value: { ...range('2.75', '5.5', 'mg/kg'), words: 'textbook table' }, ...textbook },
      ],
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('5', 'mg'), divides: 'unknown' },
          { strength: quantity('25', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'keep for what a culture asks for' },
          { words: '2 h apart from aluminium, calcium, magnesium or iron by mouth' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
          { words: 'the 20 and 80 mg tablets are not for cats' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'younger-than', months: 4 }, because: 'under 16 weeks' },
          {
            when: { kind: 'any-of', words: ['quinolone-resistance', 'quinolone-hypersensitivity'] },
            because: 'known resistance or hypersensitivity to quinolones',
          },
        ],
        ...uk,
      },
    },
  ],
  none: [],
})
