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
  sources: ['cfr-21-520-314'],
  where: '10 mg/lb: dog twice, cat once a day',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const cefadroxil = drug({
  id: 'cefadroxil',
  name: 'cefadroxil',
  aliases: [],
  class: 'first-generation cephalosporin',
  groups: ['cephalosporin'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('22', '22', 'mg/kg'), ...us },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...us },
      maxCumulative: { value: { per: 'course', days: 30, words: '30 days' }, ...us },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
          { strength: quantity('200', 'mg'), divides: 'unknown' },
          { strength: quantity('1000', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['penicillin-anaphylaxis', 'cephalosporin-anaphylaxis'] },
            because: 'anaphylaxis to a penicillin or cephalosporin',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('22', '22', 'mg/kg'), ...us },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
          { strength: quantity('200', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['penicillin-anaphylaxis', 'cephalosporin-anaphylaxis'] },
            because: 'anaphylaxis to a penicillin or cephalosporin',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
