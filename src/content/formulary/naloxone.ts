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

const msd = {
  sources: ['msd-cpr-table-earlier'],
  where: '0.02 to 0.04 mg/kg',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const recover = {
  sources: ['fletcher-2012'],
  where: '0.04 mg/kg',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const naloxone = drug({
  id: 'naloxone',
  name: 'naloxone',
  aliases: [],
  class: 'opioid antagonist',
  groups: ['opioid-antagonist'],
  doses: [
    {
      species: 'dog',
      use: 'reversal',
      routes: ['IV', 'IM', 'IO'],
      range: { value: range('0.02', '0.04', 'mg/kg'), ...msd },
      otherRanges: [{ value: { ...range('0.04', '0.04', 'mg/kg'), words: '2012 guideline' }, ...recover }],
      interval: { value: { words: 'once; every 2 to 3 min to effect' }, ...msd },
      stocks: { value: [{ strength: quantity('0.4', 'mg/mL') }, { strength: quantity('1', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'takes all pain relief away: unless in arrest, titrate in steps of 1 to 5 ug/kg' },
          { words: 'the opioid may outlast it' },
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
      use: 'reversal',
      routes: ['IV', 'IM', 'IO'],
      range: { value: range('0.02', '0.04', 'mg/kg'), ...msd },
      otherRanges: [{ value: { ...range('0.04', '0.04', 'mg/kg'), words: '2012 guideline' }, ...recover }],
      interval: { value: { words: 'once; repeated to effect' }, ...msd },
      stocks: { value: [{ strength: quantity('0.4', 'mg/mL') }, { strength: quantity('1', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'takes all pain relief away: unless in arrest, titrate in steps of 1 to 5 ug/kg' },
          { words: 'the opioid may outlast it' },
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
