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
  sources: ['cfr-21-520-1084'],
  known: 'remembered',
  strength: 'label',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const held = {
  sources: ['aaha-aafp-2015-pain', 'medicine-texts'],
  where: 'an NSAID is held while volume or pressure is low, while blood runs, and with an ulcer; remembered',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const grapiprant = drug({
  id: 'grapiprant',
  name: 'grapiprant',
  aliases: [],
  class: 'EP4 antagonist',
  groups: ['nsaid'],
  doses: [
    {
      species: 'dog',
      use: 'nsaid',
      routes: ['PO'],
      range: { value: range('2', '2', 'mg/kg'), ...us },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('20', 'mg'), divides: 'unknown' },
          { strength: quantity('60', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'labelled for arthritis; weak for fresh pain' },
          { words: 'on lean weight' },
          {
            words: 'disease of kidney or liver',
            when: { kind: 'any-of', words: ['renal-disease', 'hepatic-disease'] },
          },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hypovolaemia', 'hypotension', 'dehydration', 'shock', 'active-bleeding'] },
            because: 'low blood volume or pressure, or bleeding that goes on',
          },
          { when: { kind: 'any-of', words: ['gi-ulceration'] }, because: 'an ulcer of stomach or gut' },
        ],
        ...held,
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
