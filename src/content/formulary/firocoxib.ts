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
  sources: ['cfr-21-520-928'],
  known: 'remembered',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const firocoxib = drug({
  id: 'firocoxib',
  name: 'firocoxib',
  aliases: [],
  class: 'NSAID',
  groups: ['nsaid'],
  doses: [
    {
      species: 'dog',
      use: 'nsaid',
      routes: ['PO'],
      range: { value: range('5', '5', 'mg/kg'), ...us },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      maxSingle: { value: { limit: quantity('5', 'mg/kg') }, ...us },
      maxCumulative: { value: { per: 'course', days: 3, words: '3 days around surgery' }, ...us },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('57', 'mg'), divides: 'unknown' },
          { strength: quantity('227', 'mg'), divides: 'unknown' },
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
          { when: { kind: 'lighter-than', weight: quantity('3', 'kg') }, because: 'under 3 kg' },
          { when: { kind: 'younger-than', months: 3 }, because: 'under 10 weeks' },
        ],
        ...care,
      },
    },
  ],
  none: [
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'the formulary read has no row for cats',
      ...us,
    },
  ],
})
