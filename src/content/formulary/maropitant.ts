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

const injection = {
  sources: ['cfr-21-522-1315'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const tablets = {
  sources: ['cfr-21-520-1315'],
  where: '2 mg/kg; motion sickness 8 mg/kg for up to 2 days',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const maropitant = drug({
  id: 'maropitant',
  name: 'maropitant',
  aliases: [],
  class: 'NK1 antagonist',
  groups: ['antiemetic'],
  doses: [
    {
      species: 'dog',
      use: 'antiemetic',
      routes: ['SC', 'IV'],
      range: { value: range('1', '1', 'mg/kg'), ...injection },
      interval: { value: { words: 'every 24 h, for up to 5 days', hours: ['24', '24'] }, ...injection },
      maxCumulative: { value: { per: 'course', days: 5, words: '5 days' }, ...injection },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: '45 to 60 min before an opioid to prevent vomiting' }, { words: 'stings less when chilled' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antiemetic',
      routes: ['SC', 'IV'],
      range: { value: range('1', '1', 'mg/kg'), ...injection },
      interval: { value: { words: 'every 24 h, for up to 5 days', hours: ['24', '24'] }, ...injection },
      maxCumulative: { value: { per: 'course', days: 5, words: '5 days' }, ...injection },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: '45 to 60 min before an opioid to prevent vomiting' }, { words: 'stings less when chilled' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'dog',
      use: 'antiemetic',
      routes: ['PO'],
      range: { value: range('2', '2', 'mg/kg'), ...tablets },
      otherRanges: [{ value: { ...range('8', '8', 'mg/kg'), words: 'motion sickness, up to 2 days' }, ...tablets }],
      interval: { value: { words: 'every 24 h, for up to 5 days', hours: ['24', '24'] }, ...tablets },
      maxSingle: { value: { limit: quantity('8', 'mg/kg'), words: 'motion sickness, 2 days' }, ...tablets },
      maxCumulative: { value: { per: 'course', days: 5, words: '5 days' }, ...tablets },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('16', 'mg'), divides: 'unknown' },
          { strength: quantity('24', 'mg'), divides: 'unknown' },
          { strength: quantity('60', 'mg'), divides: 'unknown' },
          { strength: quantity('160', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'for sickness from the inner ear the motion-sickness dose is labelled for up to 2 days' }],
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
