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

const us = {
  sources: ['cfr-21-522-2075'],
  where: 'US 2 mg/kg',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const uk = {
  sources: ['robenacoxib-uk-spc'],
  where: '2 to 4 mg/kg around surgery, 1 to 2 in long use; whole tablets only',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const usCat = {
  sources: ['cfr-21-522-2075'],
  where: '2 mg/kg by injection, 1 mg/kg by mouth',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const robenacoxib = drug({
  id: 'robenacoxib',
  name: 'robenacoxib',
  aliases: [],
  class: 'NSAID',
  groups: ['nsaid'],
  doses: [
    {
      species: 'dog',
      use: 'nsaid',
      routes: ['SC', 'PO'],
      qualifier: 'around surgery',
      range: { value: range('2', '4', 'mg/kg'), ...uk },
      otherRanges: [{ value: { ...range('2', '2', 'mg/kg'), words: 'US label' }, ...us }],
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...uk },
      maxSingle: { value: { limit: quantity('4', 'mg/kg'), words: 'the high end around surgery' }, ...uk },
      maxCumulative: { value: { per: 'course', days: 3, words: '3 days (US label)' }, ...us },
      stocks: { value: [{ strength: quantity('20', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('5', 'mg'), divides: 'whole' },
          { strength: quantity('10', 'mg'), divides: 'whole' },
          { strength: quantity('20', 'mg'), divides: 'whole' },
          { strength: quantity('40', 'mg'), divides: 'whole' },
        ],
        ...uk,
      },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
          { words: 'tablets without food, not cut' },
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
          { when: { kind: 'lighter-than', weight: quantity('2.5', 'kg') }, because: 'under 2.5 kg' },
        ],
        ...care,
      },
    },
    {
      species: 'dog',
      use: 'nsaid',
      routes: ['PO'],
      qualifier: 'long use',
      range: { value: range('1', '2', 'mg/kg'), ...uk },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...uk },
      maxSingle: { value: { limit: quantity('2', 'mg/kg') }, ...uk },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('5', 'mg'), divides: 'whole' },
          { strength: quantity('10', 'mg'), divides: 'whole' },
          { strength: quantity('20', 'mg'), divides: 'whole' },
          { strength: quantity('40', 'mg'), divides: 'whole' },
        ],
        ...uk,
      },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
          { words: 'tablets without food, not cut' },
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
          { when: { kind: 'lighter-than', weight: quantity('2.5', 'kg') }, because: 'under 2.5 kg' },
        ],
        ...care,
      },
    },
    {
      species: 'cat',
      use: 'nsaid',
      routes: ['SC', 'PO'],
      range: { value: range('1', '2', 'mg/kg'), ...usCat },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...usCat },
      maxSingle: { value: { limit: quantity('2', 'mg/kg'), words: 'by injection' }, ...usCat },
      maxCumulative: { value: { per: 'course', days: 3, words: '3 days (US label)' }, ...usCat },
      stocks: { value: [{ strength: quantity('20', 'mg/mL') }], ...products },
      tablets: {
        value: [{ strength: quantity('6', 'mg'), divides: 'whole' }],
        ...uk,
      },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
          { words: 'by injection 2, by mouth 1 mg/kg' },
          { words: 'tablets without food, not cut' },
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
          { when: { kind: 'lighter-than', weight: quantity('2.5', 'kg') }, because: 'under 2.5 kg' },
          { when: { kind: 'younger-than', months: 4 }, because: 'under 4 months' },
        ],
        ...care,
      },
    },
  ],
  none: [],
})
