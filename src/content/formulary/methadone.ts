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

const merck = {
  sources: ['merck-opioid-table'],
  where: 'opioids in emergency practice',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const vetTimes = {
  sources: ['vet-times-sedation-overview'],
  where: 'combination table',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const ukLabel = {
  sources: ['methadone-uk-spc'],
  where: 'posology',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const methadone = drug({
  id: 'methadone',
  name: 'methadone',
  aliases: [],
  class: 'opioid, full mu agonist',
  groups: ['full-opioid'],
  doses: [
    {
      species: 'dog',
      use: 'analgesia_bolus',
      routes: ['IV', 'IM', 'SC'],
      range: { value: range('0.1', '0.5', 'mg/kg'), ...merck },
      otherRanges: [
        { value: { ...range('0.2', '0.5', 'mg/kg'), words: 'in combinations' }, ...vetTimes },
        { value: { ...range('0.5', '1', 'mg/kg'), words: 'UK licence' }, ...ukLabel },
      ],
      interval: { value: { words: 'every 4 to 6 h', hours: ['4', '6'] }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slows breathing and heart; have naloxone ready' },
          { words: 'secure the airway before deep sedation', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: 'may need more than others', when: { kind: 'any-of', words: ['greyhound'] } },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['respiratory-failure'] }, because: 'advanced respiratory failure' },
          {
            when: { kind: 'all-of', words: ['hepatic-disease', 'renal-disease'] },
            because: 'the label bars severe liver and kidney disease together',
          },
        ],
        ...ukLabel,
      },
    },
    {
      species: 'cat',
      use: 'analgesia_bolus',
      routes: ['IV', 'IM'],
      range: { value: range('0.1', '0.5', 'mg/kg'), ...merck },
      otherRanges: [{ value: { ...range('0.3', '0.6', 'mg/kg'), words: 'UK licence, into muscle' }, ...ukLabel }],
      interval: { value: { words: 'every 4 to 6 h', hours: ['4', '6'] }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slows breathing and heart; have naloxone ready' },
          { words: 'secure the airway before deep sedation', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: 'may excite or overheat a cat: watch the temperature' },
          { words: 'wide pupils outlast the pain relief' },
        ],
        ...texts,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['respiratory-failure'] }, because: 'advanced respiratory failure' }],
        ...ukLabel,
      },
    },
  ],
  none: [],
})
