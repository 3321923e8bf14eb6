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

const iscaid = {
  sources: ['iscaid-texts'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const ceftazidime = drug({
  id: 'ceftazidime',
  name: 'ceftazidime',
  aliases: [],
  class: 'third-generation cephalosporin',
  groups: ['cephalosporin'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['IV', 'IM', 'SC'],
      range: { value: range('25', '30', 'mg/kg'), ...iscaid },
      interval: { value: { words: 'every 6 to 8 h', hours: ['6', '8'] }, ...iscaid },
      stocks: { value: [{ strength: quantity('100', 'mg/mL') }, { strength: quantity('280', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'only for Pseudomonas that a culture proved' }],
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
      neverByHand: ['without a culture'],
    },
  ],
  none: [
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'no dose for the cat was found',
      ...iscaid,
    },
  ],
})
