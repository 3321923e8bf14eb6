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

const handout = {
  sources: ['sa-anesthesia-drug-dosages-2022'],
  where: '0.1 to 0.5 mg/kg',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const bsava = {
  sources: ['bsava-table-6-23'],
  where: '0.25 to 0.5 mg/kg',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const joined = {
  sources: ['sa-anesthesia-drug-dosages-2022', 'bsava-table-6-23'],
  where: 'inside both printed ranges',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const emergency = {
  sources: ['standard-emergency-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const diazepam = drug({
  id: 'diazepam',
  name: 'diazepam',
  aliases: [],
  class: 'benzodiazepine',
  groups: ['benzodiazepine'],
  doses: [
    {
      species: 'dog',
      use: 'induction',
      routes: ['IV'],
      range: { value: range('0.2', '0.5', 'mg/kg'), ...joined },
      otherRanges: [
        { value: { ...range('0.1', '0.5', 'mg/kg'), words: 'hand-out' }, ...handout },
        { value: { ...range('0.25', '0.5', 'mg/kg'), words: 'textbook table' }, ...bsava },
      ],
      interval: { value: { words: 'once' }, ...joined },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'only beside another induction drug' },
          { words: 'a syringe of its own; never into muscle or an infusion bag' },
        ],
        ...texts,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['hepatic-disease'] }, because: 'severe liver disease' }],
        ...texts,
      },
    },
    {
      species: 'dog',
      use: 'emergency',
      routes: ['IV'],
      range: { value: range('0.5', '1', 'mg/kg'), ...emergency },
      interval: { value: { words: 'once, may repeat' }, ...emergency },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'for seizures, as in local-anaesthetic toxicity' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'emergency',
      routes: ['IV'],
      range: { value: range('0.5', '1', 'mg/kg'), ...emergency },
      interval: { value: { words: 'once, may repeat' }, ...emergency },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'for seizures' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['again and again by mouth in a cat: the liver fails'],
    },
  ],
  none: [
    {
      species: 'cat',
      use: 'induction',
      why: 'no-dose-found',
      because: 'no induction dose for the cat was found',
      ...handout,
    },
  ],
})
