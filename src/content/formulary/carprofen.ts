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
  sources: ['cfr-21-522-304'],
  where: 'with 520.304',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const uk = {
  sources: ['carprofen-uk-spc'],
  known: 'remembered',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const carprofen = drug({
  id: 'carprofen',
  name: 'carprofen',
  aliases: [],
  class: 'NSAID',
  groups: ['nsaid'],
  doses: [
    {
      species: 'dog',
      use: 'nsaid',
      routes: ['SC', 'IV', 'PO'],
      qualifier: 'once a day',
      range: { value: range('4.4', '4.4', 'mg/kg'), ...us },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      maxSingle: { value: { limit: quantity('4.4', 'mg/kg') }, ...us },
      maxCumulative: { value: { limit: quantity('4.4', 'mg/kg'), per: 'day', words: '4.4 mg/kg a day' }, ...us },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('20', 'mg'), divides: 'unknown' },
          { strength: quantity('25', 'mg'), divides: 'unknown' },
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('75', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
          { words: 'label: 2 h before surgery; after recovery when pressure is in doubt' },
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
      species: 'dog',
      use: 'nsaid',
      routes: ['PO', 'SC'],
      qualifier: 'divided',
      range: { value: range('2.2', '2.2', 'mg/kg'), ...us },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...us },
      maxSingle: { value: { limit: quantity('4.4', 'mg/kg') }, ...us },
      maxCumulative: { value: { limit: quantity('4.4', 'mg/kg'), per: 'day', words: '4.4 mg/kg a day' }, ...us },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('20', 'mg'), divides: 'unknown' },
          { strength: quantity('25', 'mg'), divides: 'unknown' },
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('75', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
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
        ],
        ...care,
      },
    },
    {
      species: 'cat',
      use: 'nsaid',
      routes: ['SC', 'IV'],
      range: { value: range('4', '4', 'mg/kg'), ...uk },
      interval: { value: { words: 'once only' }, ...uk },
      maxSingle: { value: { limit: quantity('4', 'mg/kg') }, ...uk },
      maxCumulative: { value: { per: 'course', words: 'a single dose; never by mouth in cats' }, ...uk },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'one NSAID only, never with a steroid: ask what the ear was treated with' },
          { words: 'only with blood volume and pressure normal' },
          { words: 'on lean weight' },
          { words: 'one injection before surgery (EU licence); it lasts long and differently in each cat' },
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
          {
            when: { kind: 'given-at-least', drug: 'carprofen', dose: quantity('0', 'mg/kg') },
            because: 'never repeated in cats',
          },
        ],
        ...care,
      },
    },
  ],
  none: [],
})
