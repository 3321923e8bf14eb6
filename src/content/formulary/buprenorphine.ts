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

const noah = {
  sources: ['noah-buprenorphine'],
  where: '10 to 20 ug/kg',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const merck = {
  sources: ['merck-opioid-table'],
  where: 'dog 5 to 20, cat 5 to 10 ug/kg',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const brief = {
  sources: ['clinicians-brief-opioid-alternatives'],
  where: '20 to 30 ug/kg, in the cheek too',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const high = {
  sources: ['cfr-21-522-230'],
  where: '0.24 mg/kg a day for up to 3 days',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const skin = {
  sources: ['cfr-21-524-230'],
  where: 'one tube by weight',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const buprenorphine = drug({
  id: 'buprenorphine',
  name: 'buprenorphine',
  aliases: [],
  class: 'opioid, partial mu agonist',
  groups: ['partial-opioid'],
  doses: [
    {
      species: 'dog',
      use: 'analgesia_bolus',
      routes: ['IM', 'IV'],
      range: { value: range('10', '20', 'ug/kg'), ...noah },
      otherRanges: [{ value: { ...range('5', '20', 'ug/kg'), words: 'every 1 to 6 h' }, ...merck }],
      interval: { value: { words: 'every 6 to 8 h', hours: ['6', '8'] }, ...noah },
      stocks: { value: [{ strength: quantity('0.3', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'not enough alone for an ear canal ablation' },
          { words: 'hard to reverse' },
          { words: 'label: again after 3 to 4 h at 10 ug/kg, after 5 to 6 h at 20' },
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
      routes: ['IM', 'IV', 'OTM'],
      range: { value: range('10', '20', 'ug/kg'), ...noah },
      otherRanges: [
        { value: { ...range('5', '10', 'ug/kg'), words: 'every 4 to 8 h' }, ...merck },
        { value: { ...range('20', '30', 'ug/kg'), words: 'in the cheek too' }, ...brief },
      ],
      interval: { value: { words: 'every 6 to 8 h', hours: ['6', '8'] }, ...noah },
      stocks: { value: [{ strength: quantity('0.3', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'not enough alone for an ear canal ablation' },
          { words: 'hard to reverse' },
          { words: 'label: may be repeated once after 1 to 2 h' },
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
      use: 'analgesia_oral',
      routes: ['OTM'],
      range: { value: range('20', '30', 'ug/kg'), ...brief },
      interval: { value: { words: 'every 6 to 8 h', hours: ['6', '8'] }, ...brief },
      stocks: { value: [{ strength: quantity('0.3', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'not enough alone for an ear canal ablation' },
          { words: 'hard to reverse' },
          { words: 'into the cheek; the preservative of multi-dose vials lowers uptake' },
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
      routes: ['SC'],
      formulation: 'high concentration, 1.8 mg/mL',
      range: { value: range('0.24', '0.24', 'mg/kg'), ...high },
      interval: { value: { words: 'every 24 h, for up to 3 days', hours: ['24', '24'] }, ...high },
      maxCumulative: { value: { per: 'course', days: 3, words: '3 doses' }, ...high },
      stocks: { value: [{ strength: quantity('1.8', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'six times as concentrated as the 0.3 mg/mL product: a mix-up is more than a tenfold dose' },
          { words: 'first dose 1 h before surgery' },
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
      routes: ['TD'],
      formulation: 'transdermal, 20 mg/mL',
      range: { value: range('2.7', '6.7', 'mg/kg'), ...skin },
      interval: { value: { words: 'once, 1-2 h pre-op' }, ...skin },
      maxSingle: { value: { limit: quantity('20', 'mg'), words: 'one tube' }, ...skin },
      stocks: { value: [{ strength: quantity('20', 'mg/mL'), words: '0.4 mL or 1 mL tube' }], ...products },
      cautions: {
        value: [
          { words: 'goes on at the base of the skull: keep it out of the clip and scrub' },
          { words: 'a hazard for people' },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['on broken skin'],
    },
  ],
  none: [
    {
      species: 'dog',
      formulation: 'high concentration, 1.8 mg/mL',
      why: 'never',
      because: 'the 1.8 mg/mL product is labelled for cats under the skin only; a mix-up is more than a tenfold dose',
      ...high,
    },
    {
      species: 'dog',
      formulation: 'transdermal, 20 mg/mL',
      why: 'never',
      because: 'the 20 mg/mL product is labelled for the skin of cats only',
      ...skin,
    },
    {
      species: 'dog',
      use: 'analgesia_oral',
      why: 'no-dose-found',
      because: 'no dose into the cheek for the dog was found',
      ...noah,
    },
  ],
})
