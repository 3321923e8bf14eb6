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
  sources: ['cfr-21-520-1616'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const orbifloxacin = drug({
  id: 'orbifloxacin',
  name: 'orbifloxacin',
  aliases: [],
  class: 'fluoroquinolone',
  groups: ['fluoroquinolone'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('2.5', '7.5', 'mg/kg'), ...us },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      stocks: { value: [{ strength: quantity('30', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('5.7', 'mg'), divides: 'unknown' },
          { strength: quantity('22.7', 'mg'), divides: 'unknown' },
          { strength: quantity('68', 'mg'), divides: 'unknown' },
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
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('2.5', '7.5', 'mg/kg'), ...us },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      maxSingle: { value: { limit: quantity('7.5', 'mg/kg') }, ...us },
      stocks: { value: [{ strength: quantity('30', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('5.7', 'mg'), divides: 'unknown' },
          { strength: quantity('22.7', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'keep for what a culture asks for' },
          { words: '2 h apart from aluminium, calcium, magnesium or iron by mouth' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
          { words: 'the suspension is labelled at 7.5 mg/kg' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['quinolone-resistance', 'quinolone-hypersensitivity'] },
            because: 'known resistance or hypersensitivity to quinolones',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
