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

const label = {
  sources: ['cfr-21-522-52'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const labelWork = {
  sources: ['cfr-21-522-52'],
  where: 'working range inside the label range; the cat’s upper end 5 is remembered (EU label)',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const handout = {
  sources: ['sa-anesthesia-drug-dosages-2022'],
  where: 'cat 1.5 mg/kg',
  known: 'read',
  strength: 'handout',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const vetTimes = {
  sources: ['vet-times-iv-anaesthesia'],
  where: 'loading and infusion table',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

/** The table does not separate dogs and cats. */
const vetTimesCat = { ...vetTimes, where: 'loading and infusion table: small animals', confidence: 'medium' } as const

export const alfaxalone = drug({
  id: 'alfaxalone',
  name: 'alfaxalone',
  aliases: ['alphaxalone'],
  class: 'neuroactive steroid',
  groups: ['induction-agent'],
  doses: [
    {
      species: 'cat',
      use: 'premed',
      routes: ['IM'],
      range: { value: range('1', '2', 'mg/kg'), ...handout },
      interval: { value: { words: 'once' }, ...handout },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: '1.5 with an opioid is usual' }, { words: 'the volume is large in a big cat' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'dog',
      use: 'induction',
      routes: ['IV'],
      range: { value: range('0.5', '3', 'mg/kg'), ...labelWork, where: 'working range inside the label range' },
      otherRanges: [
        { value: { ...range('0.2', '3.5', 'mg/kg'), words: 'label, premedicated' }, ...label },
        { value: { ...range('1.5', '4.5', 'mg/kg'), words: 'label, not premedicated' }, ...label },
      ],
      interval: { value: { words: 'to effect over 60 s' }, ...labelWork },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'for the premedicated animal, to effect over a minute' },
          { words: 'breathing stops when given fast' },
          { words: 'does not take pain away' },
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
      use: 'induction',
      routes: ['IV'],
      range: { value: range('1', '5', 'mg/kg'), ...labelWork, known: 'remembered' },
      otherRanges: [
        { value: { ...range('1', '10.8', 'mg/kg'), words: 'label, premedicated' }, ...label },
        { value: { ...range('2.2', '9.7', 'mg/kg'), words: 'label, not premedicated' }, ...label },
      ],
      interval: { value: { words: 'to effect over 60 s' }, ...labelWork },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'for the premedicated animal, to effect over a minute' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'dog',
      use: 'maintenance',
      routes: ['IV'],
      range: { value: range('1.2', '1.4', 'mg/kg'), ...label },
      otherRanges: [{ value: { ...range('1.5', '2.2', 'mg/kg'), words: 'not premedicated' }, ...label }],
      interval: { value: { words: 'bolus, lasts 6 to 8 min' }, ...label },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'top-up for the premedicated dog' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'maintenance',
      routes: ['IV'],
      range: { value: range('1.1', '1.3', 'mg/kg'), ...label },
      otherRanges: [
        { value: { ...range('1.4', '1.5', 'mg/kg'), words: 'not premedicated, lasts 3 to 5 min' }, ...label },
      ],
      interval: { value: { words: 'bolus, lasts 7 to 8 min' }, ...label },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'top-up for the premedicated cat' }],
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
      range: { value: range('0.05', '0.15', 'mg/kg/min'), ...vetTimes },
      interval: { value: { words: 'continuous' }, ...vetTimes },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'support breathing' }, { words: 'wakes excited if not sedated' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'cri',
      routes: ['IV'],
      range: { value: range('0.05', '0.15', 'mg/kg/min'), ...vetTimesCat },
      interval: { value: { words: 'continuous' }, ...vetTimesCat },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'support breathing' }, { words: 'wakes excited if not sedated' }],
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
      species: 'dog',
      use: 'premed',
      why: 'no-dose-found',
      because: 'no premedication dose for the dog was found',
      ...handout,
    },
  ],
})
