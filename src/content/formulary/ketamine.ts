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
  where: '5.5 mg/kg with a benzodiazepine; 2.2 for unstable animals',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const bsava = {
  sources: ['bsava-table-6-23'],
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const vetTimes = {
  sources: ['vet-times-sedation-overview'],
  where: '2 to 5 mg/kg with midazolam; avoid with a thick heart muscle',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const load = {
  sources: ['vet-times-iv-anaesthesia'],
  where: 'loading and infusion table',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const pablo = {
  sources: ['pablo-cri-florida'],
  known: 'read',
  strength: 'handout',
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

export const ketamine = drug({
  id: 'ketamine',
  name: 'ketamine',
  aliases: [],
  class: 'NMDA antagonist',
  groups: ['nmda-antagonist'],
  doses: [
    {
      species: 'dog',
      use: 'induction',
      routes: ['IV'],
      range: { value: range('2', '5.5', 'mg/kg'), ...handout },
      otherRanges: [{ value: { ...range('5', '10', 'mg/kg'), words: 'textbook table' }, ...bsava }],
      interval: { value: { words: 'once' }, ...handout },
      stocks: { value: [{ strength: quantity('100', 'mg/mL') }, { strength: quantity('50', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'always with a benzodiazepine or an alpha-2 agonist' },
          { words: 'the eyes stay open: lubricate' },
          { words: 'relative: seizures', when: { kind: 'any-of', words: ['seizure-disorder'] } },
        ],
        ...texts,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['hypertension'] }, because: 'uncontrolled high pressure' }],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'induction',
      routes: ['IV', 'IM'],
      range: { value: range('2', '5', 'mg/kg'), ...vetTimes },
      interval: { value: { words: 'once' }, ...vetTimes },
      stocks: { value: [{ strength: quantity('100', 'mg/mL') }, { strength: quantity('50', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'the eyes stay open: lubricate' },
          {
            words: 'leaves active in the urine: care with kidney disease or a blocked bladder',
            when: { kind: 'any-of', words: ['renal-disease', 'urinary-obstruction'] },
          },
        ],
        ...texts,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['hypertrophic-cardiomyopathy'] }, because: 'a thick heart muscle' }],
        ...vetTimes,
      },
    },
    {
      species: 'dog',
      use: 'analgesia_bolus',
      routes: ['IV'],
      range: { value: range('0.25', '0.5', 'mg/kg'), ...load },
      otherRanges: [{ value: { ...range('0.5', '0.5', 'mg/kg'), words: 'before an infusion' }, ...pablo }],
      interval: { value: { words: 'once, before an infusion' }, ...load },
      stocks: {
        value: [{ strength: quantity('100', 'mg/mL') }, { strength: quantity('10', 'mg/mL'), words: 'diluted' }],
        ...products,
      },
      cautions: {
        value: [{ words: 'far under the anaesthetic dose' }],
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
      routes: ['IV'],
      range: { value: range('0.25', '0.5', 'mg/kg'), ...load },
      interval: { value: { words: 'once, before an infusion' }, ...load },
      stocks: {
        value: [{ strength: quantity('100', 'mg/mL') }, { strength: quantity('10', 'mg/mL'), words: 'diluted' }],
        ...products,
      },
      cautions: {
        value: [
          { words: 'far under the anaesthetic dose' },
          { words: 'relative: a thick heart muscle', when: { kind: 'any-of', words: ['hypertrophic-cardiomyopathy'] } },
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
      range: { value: range('2', '20', 'ug/kg/min'), ...load },
      otherRanges: [
        { value: { ...range('2', '10', 'ug/kg/min'), words: 'teaching text' }, ...pablo },
        { value: { ...range('1', '3', 'ug/kg/min'), words: 'teaching page' }, ...wingfield },
      ],
      interval: { value: { words: 'continuous' }, ...load },
      stocks: { value: [{ strength: quantity('100', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: '10 is usual during surgery, 2 to 5 awake' }, { words: 'may distress an awake animal' }],
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
      range: { value: range('2', '10', 'ug/kg/min'), ...pablo },
      otherRanges: [{ value: { ...range('2', '20', 'ug/kg/min'), words: 'as printed for small animals' }, ...load }],
      interval: { value: { words: 'continuous' }, ...pablo },
      stocks: { value: [{ strength: quantity('100', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'awake 2 to 5' },
          { words: 'relative: a thick heart muscle', when: { kind: 'any-of', words: ['hypertrophic-cardiomyopathy'] } },
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
