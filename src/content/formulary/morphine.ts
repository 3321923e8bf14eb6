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

const infusion = {
  sources: ['vet-times-iv-anaesthesia'],
  where: 'load 0.15 to 0.3 mg/kg, then 0.1 to 0.2 mg/kg/h',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const shaffran = {
  sources: ['shaffran-2013'],
  where: 'dog 0.1 to 0.3, cat 0.025 to 0.2 mg/kg/h',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const morphine = drug({
  id: 'morphine',
  name: 'morphine',
  aliases: [],
  class: 'opioid, full mu agonist',
  groups: ['full-opioid'],
  doses: [
    {
      species: 'dog',
      use: 'analgesia_bolus',
      routes: ['IM', 'SC'],
      range: { value: range('0.2', '1', 'mg/kg'), ...merck },
      otherRanges: [{ value: { ...range('0.05', '0.4', 'mg/kg'), words: 'into a vein, slowly' }, ...merck }],
      interval: { value: { words: 'every 2 to 6 h', hours: ['2', '6'] }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }, { strength: quantity('15', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slows breathing and heart; have naloxone ready' },
          { words: 'secure the airway before deep sedation', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: 'vomiting' },
          { words: 'given fast into a vein it releases histamine' },
          { words: 'relative: releases histamine', when: { kind: 'any-of', words: ['mast-cell-tumour'] } },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['with raised pressure in the skull: vomiting raises it more'],
    },
    {
      species: 'cat',
      use: 'analgesia_bolus',
      routes: ['IM', 'SC', 'IV'],
      range: { value: range('0.1', '0.25', 'mg/kg'), ...merck },
      interval: { value: { words: 'every 2 to 4 h', hours: ['2', '4'] }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }, { strength: quantity('15', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slows breathing and heart; have naloxone ready' },
          { words: 'secure the airway before deep sedation', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: 'may excite or overheat a cat: watch the temperature' },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'dog',
      use: 'cri',
      routes: ['IV'],
      range: { value: range('0.1', '0.2', 'mg/kg/h'), ...infusion },
      otherRanges: [{ value: { ...range('0.1', '0.3', 'mg/kg/h'), words: 'proceedings' }, ...shaffran }],
      interval: { value: { words: 'continuous' }, ...infusion },
      loading: { value: range('0.15', '0.3', 'mg/kg'), ...infusion },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }, { strength: quantity('15', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slows breathing and heart; have naloxone ready' },
          { words: 'secure the airway before deep sedation', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: 'load slowly' },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
  ],
  none: [
    {
      species: 'cat',
      use: 'cri',
      why: 'no-dose-found',
      because: 'one proceedings page prints 0.025 to 0.2 mg/kg/h; no second source was found',
      ...shaffran,
    },
  ],
})
