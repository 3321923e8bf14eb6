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
  sources: ['cfr-21-520-812', 'aaha-2023-allergic-skin', 'small-animal-internal-medicine-6'],
  where: '5 to 20 mg/kg',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const cat = {
  sources: ['small-animal-internal-medicine-6', 'enrofloxacin-eu-suspension'],
  where: 'cat 5 mg/kg',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const retina = {
  sources: ['gelatt-2001'],
  where: 'dose-related damage of the retina',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const oldText = {
  sources: ['cfr-21-520-812'],
  where: '5 to 20 in old regulation text: not to be used in cats',
  known: 'read',
  strength: 'label',
  confidence: 'low',
  checked: '2026-11-25',
} as const

export const enrofloxacin = drug({
  id: 'enrofloxacin',
  name: 'enrofloxacin',
  aliases: [],
  class: 'fluoroquinolone',
  groups: ['fluoroquinolone'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO', 'IV', 'SC'],
      range: { value: range('5', '20', 'mg/kg'), ...us },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      maxCumulative: { value: { per: 'course', days: 30, words: '30 days' }, ...us },
      stocks: {
        value: [
          { strength: quantity('22.7', 'mg/mL') },
          { strength: quantity('25', 'mg/mL') },
          { strength: quantity('50', 'mg/mL') },
          { strength: quantity('100', 'mg/mL') },
        ],
        ...products,
      },
      tablets: {
        value: [
          { strength: quantity('15', 'mg'), divides: 'unknown' },
          { strength: quantity('22.7', 'mg'), divides: 'unknown' },
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('68', 'mg'), divides: 'unknown' },
          { strength: quantity('136', 'mg'), divides: 'unknown' },
          { strength: quantity('150', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'keep for what a culture asks for' },
          { words: '2 h apart from aluminium, calcium, magnesium or iron by mouth' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
          { words: 'Pseudomonas needs the top of the range and a measured MIC' },
          { words: 'into a vein slowly and diluted' },
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
      routes: ['PO', 'SC'],
      range: { value: range('5', '5', 'mg/kg'), ...cat },
      otherRanges: [
        { value: { ...range('5', '20', 'mg/kg'), words: 'old regulation text, kept only to warn of it' }, ...oldText },
      ],
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...cat },
      maxSingle: { value: { limit: quantity('5', 'mg/kg'), words: 'the retina' }, ...retina },
      maxCumulative: { value: { limit: quantity('5', 'mg/kg'), per: 'day', words: '5 mg/kg a day' }, ...retina },
      stocks: {
        value: [
          { strength: quantity('25', 'mg/mL'), words: 'oral' },
          { strength: quantity('25', 'mg/mL'), words: 'inj' },
        ],
        ...products,
      },
      tablets: {
        value: [
          { strength: quantity('15', 'mg'), divides: 'unknown' },
          { strength: quantity('22.7', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'keep for what a culture asks for' },
          { words: '2 h apart from aluminium, calcium, magnesium or iron by mouth' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
          { words: 'more blinds cats: marbofloxacin or pradofloxacin first' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['renal-disease', 'retinal-disease'] },
            because: 'kidney or retinal disease',
          },
          {
            when: { kind: 'any-of', words: ['quinolone-resistance', 'quinolone-hypersensitivity'] },
            because: 'known resistance or hypersensitivity to quinolones',
          },
        ],
        ...retina,
      },
    },
  ],
  none: [],
})
