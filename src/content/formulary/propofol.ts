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
  where: '4 mg/kg after premedication, 8 without; the low end is remembered',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
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

const vetTimesCat = {
  sources: ['vet-times-iv-anaesthesia'],
  where: '0.1 to 0.6 for small animals; the cat end is remembered',
  known: 'remembered',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const boveri = {
  sources: ['boveri-2013'],
  where: 'means: normal 2.24, overweight 1.83 mg/kg',
  known: 'read',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const label = {
  sources: ['cfr-21-522-2005'],
  where: 'older text',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const wingfield = {
  sources: ['wingfield-cri-csu'],
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const propofol = drug({
  id: 'propofol',
  name: 'propofol',
  aliases: [],
  class: 'alkylphenol',
  groups: ['induction-agent'],
  doses: [
    {
      species: 'dog',
      use: 'induction',
      routes: ['IV'],
      range: { value: range('1', '4', 'mg/kg'), ...handout, known: 'remembered' },
      otherRanges: [
        { value: { ...range('2', '6', 'mg/kg'), words: 'as printed' }, ...vetTimes },
        { value: { ...range('1.83', '2.24', 'mg/kg'), words: 'study means, overweight and normal' }, ...boveri },
      ],
      interval: { value: { words: 'to effect over 60-90 s' }, ...handout },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'for the premedicated animal; give by quarters, to effect' },
          { words: 'breathing may stop and pressure fall' },
          { words: 'an emulsion: keep it sterile' },
          { words: 'relative: egg or soya sensitivity', when: { kind: 'any-of', words: ['egg-or-soya-sensitivity'] } },
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
      use: 'induction_unpremedicated',
      routes: ['IV'],
      range: { value: range('5.5', '7', 'mg/kg'), ...label },
      interval: { value: { words: 'to effect' }, ...label },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'label dose without premedication, to effect' },
          { words: 'relative: egg or soya sensitivity', when: { kind: 'any-of', words: ['egg-or-soya-sensitivity'] } },
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
      range: { value: range('2', '8', 'mg/kg'), ...handout, known: 'remembered' },
      otherRanges: [{ value: { ...range('8', '13.2', 'mg/kg'), words: 'label, not premedicated' }, ...label }],
      interval: { value: { words: 'to effect over 60-90 s' }, ...handout },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'for the premedicated animal; give by quarters, to effect' },
          { words: 'daily repeats harm the red cells' },
          { words: 'relative: egg or soya sensitivity', when: { kind: 'any-of', words: ['egg-or-soya-sensitivity'] } },
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
      range: {
        value: range('0.1', '0.4', 'mg/kg/min'),
        ...vetTimes,
        where: 'printed as 0.1 to 0.6 for small animals; 0.4 is a cautious choice',
        known: 'remembered',
      },
      otherRanges: [
        { value: { ...range('0.1', '0.6', 'mg/kg/min'), words: 'as printed for small animals' }, ...vetTimes },
        { value: { ...range('0.05', '0.2', 'mg/kg/min'), words: 'teaching page' }, ...wingfield },
      ],
      interval: { value: { words: 'continuous' }, ...vetTimes },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'support breathing' }, { words: 'nothing else in the syringe' }],
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
      range: { value: range('0.1', '0.3', 'mg/kg/min'), ...vetTimesCat },
      otherRanges: [
        { value: { ...range('0.1', '0.6', 'mg/kg/min'), words: 'as printed for small animals' }, ...vetTimes },
      ],
      interval: { value: { words: 'continuous' }, ...vetTimesCat },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'slow recovery; repeats harm the red cells' }],
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
      use: 'induction_unpremedicated',
      why: 'no-dose-found',
      because:
        'the label prints 8 to 13.2 mg/kg for the unpremedicated cat, in an older text only; it stands with the induction row',
      ...label,
    },
  ],
})
