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

const uk = {
  sources: ['uk-surgical-prophylaxis'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const cefuroxime = drug({
  id: 'cefuroxime',
  name: 'cefuroxime',
  aliases: [],
  class: 'second-generation cephalosporin',
  groups: ['cephalosporin'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_periop',
      routes: ['IV'],
      range: { value: range('15', '20', 'mg/kg'), ...uk },
      interval: { value: { words: 'every 90 to 120 min during surgery', hours: ['1.5', '2'] }, ...uk },
      stocks: { value: [{ strength: quantity('125', 'mg/mL') }, { strength: quantity('75', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'where cefazolin is not on the shelf' }],
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
      use: 'antibiotic_periop',
      routes: ['IV'],
      range: { value: range('15', '20', 'mg/kg'), ...uk },
      interval: { value: { words: 'every 90 to 120 min during surgery', hours: ['1.5', '2'] }, ...uk },
      stocks: { value: [{ strength: quantity('125', 'mg/mL') }, { strength: quantity('75', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'where cefazolin is not on the shelf' }],
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
