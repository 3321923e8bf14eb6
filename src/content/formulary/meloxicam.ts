import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const care = {
  sources: ['aaha-aafp-2015-pain'],
  where: 'one NSAID and its washout were read there; the rest is remembered from labels',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const usInjection = {
  sources: ['cfr-21-522-1367'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const usBoth = {
  sources: ['cfr-21-522-1367', 'cfr-21-520-1367'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const usOral = {
  sources: ['cfr-21-520-1367'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const chewable = {
  sources: ['meloxicam-chewable-uk-spc'],
  where: 'tablet table: bands deliver 0.10 to 0.15 mg/kg; halves of 1 mg are used',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const eu = {
  sources: ['meloxicam-eu-spc'],
  known: 'remembered',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const ckd = {
  sources: ['meloxicam-ckd-cohort'],
  where: '0.02 mg/kg a day',
  known: 'read',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

/** Between the two labels' injections, 0.2 and 0.3 mg/kg: what a syringe rounds down is still the larger one. */
const afterUsInjection = {
  when: { kind: 'given-at-least', drug: 'meloxicam', dose: quantity('0.25', 'mg/kg') },
  because: 'nothing more after the 0.3 mg/kg injection',
} as const

/** The first day's dose is given once: a second one needs a day between, less an hour for a dose given a little early. */
const sameDay = {
  when: { kind: 'given-within', drug: 'meloxicam', time: quantity('1380', 'min') },
  because: 'one dose of meloxicam in a day',
} as const

export const meloxicam = drug({
  id: 'meloxicam',
  name: 'meloxicam',
  aliases: [],
  class: 'NSAID',
  groups: ['nsaid'],
  doses: [
    {
      species: 'dog',
      use: 'nsaid',
      routes: ['SC', 'IV', 'PO'],
      qualifier: 'day 1',
      range: { value: range('0.2', '0.2', 'mg/kg'), ...usBoth },
      interval: { value: { words: 'once, on day 1' }, ...usBoth },
      maxSingle: { value: { limit: quantity('0.2', 'mg/kg') }, ...usBoth },
      stocks: {
        value: [
          { strength: quantity('5', 'mg/mL'), words: 'injection' },
          { strength: quantity('1.5', 'mg/mL'), words: 'by mouth' },
          { strength: quantity('0.5', 'mg/mL'), words: 'by mouth' },
        ],
        ...products,
      },
      tablets: {
        value: [
          { strength: quantity('1', 'mg'), divides: 'halves' },
          { strength: quantity('2.5', 'mg'), divides: 'halves' },
        ],
        ...chewable,
      },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
          { words: 'the usual strengths differ up to tenfold' },
        ],
        ...care,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'hypotension', 'dehydration', 'shock', 'active-bleeding'] },
            because: 'low blood volume or pressure, or bleeding that goes on',
          },
          { when: { kind: 'any-of', words: ['gi-ulceration'] }, because: 'an ulcer of stomach or gut' },
          {
            when: { kind: 'any-of', words: ['renal-disease', 'hepatic-disease'] },
            because: 'advanced kidney or liver disease',
          },
          { when: { kind: 'any-of', words: ['bleeding-disorder'] }, because: 'a bleeding disorder' },
          sameDay,
        ],
        ...care,
      },
    },
    {
      species: 'dog',
      use: 'nsaid',
      routes: ['PO'],
      qualifier: 'from day 2',
      range: { value: range('0.1', '0.1', 'mg/kg'), ...usOral },
      otherRanges: [
        { value: { ...range('0.1', '0.15', 'mg/kg'), words: 'what the UK chewable bands deliver' }, ...chewable },
      ],
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...usOral },
      maxSingle: { value: { limit: quantity('0.1', 'mg/kg') }, ...usOral },
      stocks: {
        value: [
          { strength: quantity('1.5', 'mg/mL'), words: 'by mouth' },
          { strength: quantity('0.5', 'mg/mL'), words: 'by mouth' },
        ],
        ...products,
      },
      tablets: {
        value: [
          { strength: quantity('1', 'mg'), divides: 'halves' },
          { strength: quantity('2.5', 'mg'), divides: 'halves' },
        ],
        ...chewable,
      },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
          { words: 'the usual strengths differ up to tenfold' },
        ],
        ...care,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'hypotension', 'dehydration', 'shock', 'active-bleeding'] },
            because: 'low blood volume or pressure, or bleeding that goes on',
          },
          { when: { kind: 'any-of', words: ['gi-ulceration'] }, because: 'an ulcer of stomach or gut' },
          {
            when: { kind: 'any-of', words: ['renal-disease', 'hepatic-disease'] },
            because: 'advanced kidney or liver disease',
          },
          { when: { kind: 'any-of', words: ['bleeding-disorder'] }, because: 'a bleeding disorder' },
        ],
        ...care,
      },
    },
    {
      species: 'cat',
      use: 'nsaid',
      routes: ['SC'],
      qualifier: 'US label',
      range: { value: range('0.3', '0.3', 'mg/kg'), ...usInjection },
      interval: { value: { words: 'once only' }, ...usInjection },
      maxSingle: { value: { limit: quantity('0.3', 'mg/kg') }, ...usInjection },
      maxCumulative: { value: { per: 'course', words: 'a single dose: no further NSAID' }, ...usInjection },
      stocks: { value: [{ strength: quantity('5', 'mg/mL'), words: 'injection' }], ...products },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
          { words: 'US boxed warning against repeats in cats (remembered)' },
        ],
        ...care,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'hypotension', 'dehydration', 'shock', 'active-bleeding'] },
            because: 'low blood volume or pressure, or bleeding that goes on',
          },
          { when: { kind: 'any-of', words: ['gi-ulceration'] }, because: 'an ulcer of stomach or gut' },
          {
            when: { kind: 'any-of', words: ['renal-disease', 'hepatic-disease'] },
            because: 'advanced kidney or liver disease',
          },
          { when: { kind: 'any-of', words: ['bleeding-disorder'] }, because: 'a bleeding disorder' },
          afterUsInjection,
          sameDay,
        ],
        ...care,
      },
    },
    {
      species: 'cat',
      use: 'nsaid',
      routes: ['SC'],
      qualifier: 'EU label',
      range: { value: range('0.2', '0.2', 'mg/kg'), ...eu },
      interval: { value: { words: 'once, then a course by mouth' }, ...eu },
      maxSingle: { value: { limit: quantity('0.2', 'mg/kg') }, ...eu },
      stocks: { value: [{ strength: quantity('2', 'mg/mL'), words: 'injection' }], ...products },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
        ],
        ...care,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'hypotension', 'dehydration', 'shock', 'active-bleeding'] },
            because: 'low blood volume or pressure, or bleeding that goes on',
          },
          { when: { kind: 'any-of', words: ['gi-ulceration'] }, because: 'an ulcer of stomach or gut' },
          {
            when: { kind: 'any-of', words: ['renal-disease', 'hepatic-disease'] },
            because: 'advanced kidney or liver disease',
          },
          { when: { kind: 'any-of', words: ['bleeding-disorder'] }, because: 'a bleeding disorder' },
          afterUsInjection,
          sameDay,
        ],
        ...care,
      },
    },
    {
      species: 'cat',
      use: 'nsaid',
      routes: ['PO'],
      qualifier: 'EU label',
      range: { value: range('0.05', '0.05', 'mg/kg'), ...eu },
      otherRanges: [{ value: { ...range('0.02', '0.02', 'mg/kg'), words: 'cats with kidney disease, daily' }, ...ckd }],
      interval: { value: { words: 'every 24 h, for up to 4 days after the injection', hours: ['24', '24'] }, ...eu },
      maxSingle: { value: { limit: quantity('0.05', 'mg/kg') }, ...eu },
      maxCumulative: { value: { per: 'course', days: 4, words: '4 days after surgery' }, ...eu },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL'), words: 'by mouth' }], ...products },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
          { words: 'the dog suspension is three times as strong' },
        ],
        ...care,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'hypotension', 'dehydration', 'shock', 'active-bleeding'] },
            because: 'low blood volume or pressure, or bleeding that goes on',
          },
          { when: { kind: 'any-of', words: ['gi-ulceration'] }, because: 'an ulcer of stomach or gut' },
          {
            when: { kind: 'any-of', words: ['renal-disease', 'hepatic-disease'] },
            because: 'advanced kidney or liver disease',
          },
          { when: { kind: 'any-of', words: ['bleeding-disorder'] }, because: 'a bleeding disorder' },
          afterUsInjection,
        ],
        ...care,
      },
    },
  ],
  none: [],
})
