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

const joined = {
  sources: ['small-animal-internal-medicine-6', 'vet-record-open-antibiotics'],
  where: '20 in the first, 30 in the second',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const papich = {
  sources: ['papich-dose-poster'],
  where: '10 to 20 every 8 h',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const ampicillinSulbactam = drug({
  id: 'ampicillin-sulbactam',
  name: 'ampicillin with sulbactam',
  aliases: ['ampicillin + sulbactam'],
  class: 'aminopenicillin with inhibitor',
  groups: ['aminopenicillin'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_periop',
      routes: ['IV'],
      range: { value: range('20', '30', 'mg/kg'), ...joined },
      otherRanges: [{ value: { ...range('10', '20', 'mg/kg'), words: 'every 8 h' }, ...papich }],
      interval: {
        value: { words: 'every 90 to 120 min during surgery, every 8 h after it', hours: ['1.5', '2'] },
        ...joined,
      },
      stocks: { value: [{ strength: quantity('30', 'mg/mL'), words: 'reconstituted' }], ...products },
      cautions: {
        value: [{ words: 'the dose is the sum of both actives' }],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['penicillin-anaphylaxis'] }, because: 'anaphylaxis to a penicillin' },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_periop',
      routes: ['IV'],
      range: { value: range('20', '30', 'mg/kg'), ...joined },
      otherRanges: [{ value: { ...range('10', '20', 'mg/kg'), words: 'every 8 h' }, ...papich }],
      interval: {
        value: { words: 'every 90 to 120 min during surgery, every 8 h after it', hours: ['1.5', '2'] },
        ...joined,
      },
      stocks: { value: [{ strength: quantity('30', 'mg/mL'), words: 'reconstituted' }], ...products },
      cautions: {
        value: [{ words: 'the dose is the sum of both actives' }],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['penicillin-anaphylaxis'] }, because: 'anaphylaxis to a penicillin' },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
