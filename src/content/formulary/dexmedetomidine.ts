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

const vetTimes = {
  sources: ['vet-times-sedation-overview'],
  where: 'combination table: 1 to 10 ug/kg, 1 to 3 into a vein',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const handout = {
  sources: ['sa-anesthesia-drug-dosages-2022'],
  where: 'usual 5',
  known: 'read',
  strength: 'handout',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const bsava = {
  sources: ['bsava-sedation-protocols'],
  where: 'IM 2.5 to 10, IV 1 to 5 ug/kg',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const label = {
  sources: ['cfr-21-522-558', 'dexmedetomidine-us-label'],
  where: 'doses by body surface (dog) and by weight (cat)',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const infusion = {
  sources: ['vet-times-iv-anaesthesia'],
  where: 'loading and infusion table: 0.5 to 5 ug/kg/h; the upper end here is a cautious choice',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const infusionCat = {
  sources: ['vet-times-iv-anaesthesia'],
  where: 'small animals 0.5 to 5 ug/kg/h; the cat end is remembered',
  known: 'remembered',
  strength: 'web',
  confidence: 'low',
  checked: '2026-11-25',
} as const

export const dexmedetomidine = drug({
  id: 'dexmedetomidine',
  name: 'dexmedetomidine',
  aliases: [],
  class: 'alpha-2 agonist',
  groups: ['alpha-2-agonist'],
  doses: [
    {
      species: 'dog',
      use: 'premed',
      routes: ['IM', 'IV'],
      range: { value: range('1', '10', 'ug/kg'), ...vetTimes },
      otherRanges: [
        { value: { ...range('1', '15', 'ug/kg'), words: 'usual 5' }, ...handout },
        { value: { ...range('2.5', '10', 'ug/kg'), words: 'into muscle' }, ...bsava },
        { value: { ...range('1', '5', 'ug/kg'), words: 'into a vein' }, ...bsava },
      ],
      interval: { value: { words: 'once' }, ...vetTimes },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL') }, { strength: quantity('0.1', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'doses are of the hydrochloride' },
          { words: 'slow heart and narrow vessels are expected; no anticholinergic while the pressure is high' },
          { words: 'the blink is lost: lubricate both eyes' },
          { words: 'into a vein use the low end' },
          { words: 'vomiting' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'shock'] },
            because: 'heart disease or shock: it narrows vessels and slows the heart',
          },
          {
            when: { kind: 'any-of', words: ['respiratory-disease', 'hepatic-disease', 'renal-disease'] },
            because: 'severe disease of lung, liver or kidney',
          },
          {
            when: { kind: 'any-of', words: ['bradycardia', 'hypotension'] },
            because: 'the heart is already slow or the pressure low',
          },
        ],
        ...label,
      },
    },
    {
      species: 'dog',
      use: 'premed',
      routes: ['IM'],
      range: { value: range('125', '375', 'ug/m2'), ...label },
      interval: { value: { words: 'once' }, ...label },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL') }, { strength: quantity('0.1', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'the low end for short mild procedures, the high end for longer ones' },
          { words: 'the blink is lost: lubricate both eyes' },
          {
            words: 'under 2 kg the 0.5 mg/mL product cannot be measured accurately',
            when: { kind: 'lighter-than', weight: quantity('2', 'kg') },
          },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'shock'] },
            because: 'heart disease or shock: it narrows vessels and slows the heart',
          },
          {
            when: { kind: 'any-of', words: ['respiratory-disease', 'hepatic-disease', 'renal-disease'] },
            because: 'severe disease of lung, liver or kidney',
          },
        ],
        ...label,
      },
    },
    {
      species: 'dog',
      use: 'sedation',
      routes: ['IM'],
      range: { value: range('500', '500', 'ug/m2'), ...label },
      otherRanges: [{ value: { ...range('375', '375', 'ug/m2'), words: 'into a vein' }, ...label }],
      interval: { value: { words: 'once' }, ...label },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL') }, { strength: quantity('0.1', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'label dose, far above what premedication needs' },
          { words: 'the blink is lost: lubricate both eyes' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'shock'] },
            because: 'heart disease or shock: it narrows vessels and slows the heart',
          },
          {
            when: { kind: 'any-of', words: ['respiratory-disease', 'hepatic-disease', 'renal-disease'] },
            because: 'severe disease of lung, liver or kidney',
          },
        ],
        ...label,
      },
    },
    {
      species: 'cat',
      use: 'premed',
      routes: ['IM', 'IV'],
      range: { value: range('1', '10', 'ug/kg'), ...vetTimes },
      otherRanges: [{ value: { ...range('2.5', '10', 'ug/kg'), words: 'into muscle' }, ...bsava }],
      interval: { value: { words: 'once' }, ...vetTimes },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL') }, { strength: quantity('0.1', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slow heart and narrow vessels are expected; no anticholinergic while the pressure is high' },
          { words: 'the blink is lost: lubricate both eyes' },
          { words: 'vomiting' },
          {
            words: 'only on a cardiologist’s advice',
            when: { kind: 'any-of', words: ['hypertrophic-cardiomyopathy'] },
          },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['shock', 'cardiovascular-disease', 'respiratory-disease'] },
            because: 'shock, or severe disease of heart or lung',
          },
        ],
        ...label,
      },
    },
    {
      species: 'cat',
      use: 'sedation',
      routes: ['IM'],
      range: { value: range('40', '40', 'ug/kg'), ...label },
      interval: { value: { words: 'once' }, ...label },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL') }, { strength: quantity('0.1', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'label dose, much above the clinical range' },
          { words: 'fluid in the lungs has been reported' },
          { words: 'the blink is lost: lubricate both eyes' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'shock'] },
            because: 'heart disease or shock: it narrows vessels and slows the heart',
          },
          {
            when: { kind: 'any-of', words: ['respiratory-disease', 'hepatic-disease', 'renal-disease'] },
            because: 'severe disease of lung, liver or kidney',
          },
        ],
        ...label,
      },
    },
    {
      species: 'dog',
      use: 'analgesia_bolus',
      routes: ['IV'],
      qualifier: 'slow',
      range: { value: range('0.5', '1', 'ug/kg'), ...texts },
      interval: { value: { words: 'once, may repeat' }, ...texts },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL'), words: 'dilute' }], ...products },
      cautions: {
        value: [{ words: 'for a rough recovery, once pain and bladder are checked' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'hypovolaemia'] },
            because: 'heart disease or low blood volume',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'analgesia_bolus',
      routes: ['IV'],
      qualifier: 'slow',
      range: { value: range('0.5', '1', 'ug/kg'), ...texts },
      interval: { value: { words: 'once, may repeat' }, ...texts },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL'), words: 'dilute' }], ...products },
      cautions: {
        value: [{ words: 'for a rough recovery, once pain and bladder are checked' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'hypovolaemia'] },
            because: 'heart disease or low blood volume',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'dog',
      use: 'cri',
      routes: ['IV'],
      range: { value: range('0.5', '2', 'ug/kg/h'), ...infusion, known: 'remembered' },
      otherRanges: [{ value: { ...range('0.5', '5', 'ug/kg/h'), words: 'as printed' }, ...infusion }],
      interval: { value: { words: 'continuous' }, ...infusion },
      loading: { value: range('0.5', '3', 'ug/kg'), ...infusion },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL'), words: 'dilute' }], ...products },
      cautions: {
        value: [{ words: 'watch rhythm and pressure' }, { words: 'a loading dose of 0.5 to 2 ug/kg is usual' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'hypovolaemia'] },
            because: 'heart disease or low blood volume',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'cri',
      routes: ['IV'],
      range: { value: range('0.5', '1', 'ug/kg/h'), ...infusionCat },
      otherRanges: [{ value: { ...range('0.5', '5', 'ug/kg/h'), words: 'as printed for small animals' }, ...infusion }],
      interval: { value: { words: 'continuous' }, ...infusionCat },
      stocks: { value: [{ strength: quantity('0.5', 'mg/mL'), words: 'dilute' }], ...products },
      cautions: {
        value: [{ words: 'watch rhythm and pressure' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['cardiovascular-disease', 'hypovolaemia'] },
            because: 'heart disease or low blood volume',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
