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
  sources: ['cfr-21-520-370'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const cefpodoxime = drug({
  id: 'cefpodoxime',
  name: 'cefpodoxime',
  aliases: ['cefpodoxime proxetil'],
  class: 'third-generation cephalosporin',
  groups: ['cephalosporin'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('5', '10', 'mg/kg'), ...us },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...us },
      maxCumulative: { value: { per: 'course', days: 28, words: '28 days' }, ...us },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('100', 'mg'), divides: 'unknown' },
          { strength: quantity('200', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'keep for what a culture asks for' }, { words: 'with food' }],
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
  none: [
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'the label read is for dogs',
      ...us,
    },
  ],
})
