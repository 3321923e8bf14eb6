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

const surgery = {
  sources: ['vetsurgeryonline-prophylaxis'],
  where: '22 mg/kg within 30 min of incision, again every 90 min',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const surgeryCat = {
  sources: ['vetsurgeryonline-prophylaxis'],
  where: '22 mg/kg; species not separated',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const timing = {
  sources: ['vetsurgeryonline-prophylaxis', 'javma-cruciate-audit'],
  where: 'within 30 min and every 90 min in the first; the audit counted 60 min as right and repeated every 120',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const audit = {
  sources: ['javma-cruciate-audit'],
  where: 'abstract: repeats counted every 120 min',
  known: 'read',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

export const cefazolin = drug({
  id: 'cefazolin',
  name: 'cefazolin',
  aliases: ['cephazolin'],
  class: 'first-generation cephalosporin',
  groups: ['cephalosporin'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_periop',
      routes: ['IV'],
      range: { value: range('22', '22', 'mg/kg'), ...surgery },
      interval: {
        value: { words: 'every 90 min during surgery (an audit used 120 min)', hours: ['1.5', '1.5'] },
        ...surgery,
      },
      otherIntervals: [{ value: { words: 'every 120 min during surgery', hours: ['2', '2'] }, ...audit }],
      maxSingle: { value: { limit: quantity('2000', 'mg'), words: 'per dose' }, ...surgery },
      stocks: {
        value: [
          { strength: quantity('100', 'mg/mL'), words: 'reconstituted, 1 g in 10 mL' },
          { strength: quantity('330', 'mg/mL') },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'finish within 60 min before incision, better 30' },
          { words: 'some surgeons swab the bulla first' },
          { words: 'stop at closure unless the culture asks for a course' },
        ],
        ...timing,
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
      range: { value: range('22', '22', 'mg/kg'), ...surgeryCat },
      interval: {
        value: { words: 'every 90 min during surgery (an audit used 120 min)', hours: ['1.5', '1.5'] },
        ...surgeryCat,
      },
      otherIntervals: [{ value: { words: 'every 120 min during surgery', hours: ['2', '2'] }, ...audit }],
      stocks: { value: [{ strength: quantity('100', 'mg/mL'), words: 'reconstituted' }], ...products },
      cautions: {
        value: [
          { words: 'finish within 60 min before incision, better 30' },
          { words: 'some surgeons swab the bulla first' },
          { words: 'stop at closure unless the culture asks for a course' },
        ],
        ...timing,
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
