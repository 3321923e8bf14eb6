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

export const hydromorphone = drug({
  id: 'hydromorphone',
  name: 'hydromorphone',
  aliases: [],
  class: 'opioid, full mu agonist',
  groups: ['full-opioid'],
  doses: [
    {
      species: 'dog',
      use: 'analgesia_bolus',
      routes: ['IM', 'SC'],
      range: { value: range('0.05', '0.2', 'mg/kg'), ...merck },
      otherRanges: [{ value: { ...range('0.02', '0.1', 'mg/kg'), words: 'into a vein, every 2 to 4 h' }, ...merck }],
      interval: { value: { words: 'every 2 to 6 h', hours: ['2', '6'] }, ...merck },
      stocks: { value: [{ strength: quantity('2', 'mg/mL') }, { strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slows breathing and heart; have naloxone ready' },
          { words: 'secure the airway before deep sedation', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: 'panting and vomiting' },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'analgesia_bolus',
      routes: ['IM', 'SC'],
      range: { value: range('0.05', '0.1', 'mg/kg'), ...merck },
      otherRanges: [{ value: { ...range('0.02', '0.05', 'mg/kg'), words: 'into a vein' }, ...merck }],
      interval: { value: { words: 'every 2 to 6 h', hours: ['2', '6'] }, ...merck },
      stocks: { value: [{ strength: quantity('2', 'mg/mL') }, { strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slows breathing and heart; have naloxone ready' },
          { words: 'secure the airway before deep sedation', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: 'overheats cats: temperature every hour' },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
  ],
  none: [],
})
