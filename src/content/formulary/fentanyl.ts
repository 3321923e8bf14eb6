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

const euLabel = {
  sources: ['zero-pain-opioids'],
  where: 'EU label 5 to 10',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const lukasik = {
  sources: ['lukasik-2015'],
  where: '1 to 4; species not separated',
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
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const joinedCat = {
  sources: ['lukasik-2015', 'vet-times-iv-anaesthesia'],
  where: 'low end from the first, high end from the second',
  known: 'read',
  strength: 'handout',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const wingfield = {
  sources: ['wingfield-cri-csu'],
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const patch = {
  sources: ['merck-opioid-table'],
  where: 'patch by weight; the dose per kilogram and the 72 h are remembered',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const fentanyl = drug({
  id: 'fentanyl',
  name: 'fentanyl',
  aliases: [],
  class: 'opioid, full mu agonist',
  groups: ['full-opioid'],
  doses: [
    {
      species: 'dog',
      use: 'analgesia_bolus',
      routes: ['IV'],
      range: { value: range('2', '10', 'ug/kg'), ...merck },
      otherRanges: [{ value: { ...range('5', '10', 'ug/kg'), words: 'EU label' }, ...euLabel }],
      interval: { value: { words: 'every 20 to 60 min during surgery' }, ...merck },
      stocks: { value: [{ strength: quantity('50', 'ug/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slows breathing and heart; have naloxone ready' },
          { words: 'secure the airway before deep sedation', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: 'ventilate at high doses' },
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
      routes: ['IV'],
      range: { value: range('1', '5', 'ug/kg'), ...joinedCat },
      otherRanges: [
        { value: { ...range('1', '4', 'ug/kg'), words: 'species not separated' }, ...lukasik },
        { value: { ...range('3', '5', 'ug/kg'), words: 'loading dose' }, ...vetTimes },
      ],
      interval: { value: { words: 'every 20 to 60 min during surgery' }, ...joinedCat },
      stocks: { value: [{ strength: quantity('50', 'ug/mL') }], ...products },
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
      range: { value: range('2', '20', 'ug/kg/h'), ...merck },
      otherRanges: [
        { value: { ...range('5', '20', 'ug/kg/h'), words: 'during surgery' }, ...vetTimes },
        { value: { ...range('1', '5', 'ug/kg/h'), words: 'teaching page' }, ...wingfield },
        { value: { ...range('1', '4', 'ug/kg/h'), words: 'proceedings' }, ...lukasik },
      ],
      interval: { value: { words: 'continuous' }, ...merck },
      stocks: { value: [{ strength: quantity('50', 'ug/mL') }], ...products },
      cautions: {
        value: [
          { words: 'slows breathing and heart; have naloxone ready' },
          { words: 'secure the airway before deep sedation', when: { kind: 'any-of', words: ['brachycephalic'] } },
          { words: 'awake 2 to 5; up to 20 during surgery with ventilation' },
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
      use: 'cri',
      routes: ['IV'],
      range: { value: range('1', '5', 'ug/kg/h'), ...wingfield, confidence: 'medium' },
      otherRanges: [
        { value: { ...range('1', '4', 'ug/kg/h'), words: 'proceedings' }, ...lukasik },
        { value: { ...range('5', '20', 'ug/kg/h'), words: 'during surgery' }, ...vetTimes },
      ],
      interval: { value: { words: 'continuous' }, ...wingfield },
      stocks: { value: [{ strength: quantity('50', 'ug/mL') }], ...products },
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
      use: 'transdermal',
      routes: ['TD'],
      range: { value: range('2', '5', 'ug/kg/h'), ...patch, known: 'remembered' },
      interval: { value: { words: 'every 72 h', hours: ['72', '72'] }, ...patch },
      maxSingle: { value: { limit: quantity('100', 'ug/h') }, ...patch },
      stocks: {
        value: [
          { words: 'patch 12.5 ug/h' },
          { words: 'patch 25 ug/h' },
          { words: 'patch 50 ug/h' },
          { words: 'patch 75 ug/h' },
          { words: 'patch 100 ug/h' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'never cut a patch' },
          { words: '12 to 24 h until it works' },
          { words: 'a warm mat speeds it up dangerously' },
          { words: 'keep it away from the ear bandage' },
          { words: 'usual size: under 2.5 kg 12.5, to 10 kg 25, to 20 kg 50, to 30 kg 75, above 100 ug/h' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['unsupervised-children-at-home'] },
            because: 'a patch at home with unwatched children',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'transdermal',
      routes: ['TD'],
      range: { value: range('12.5', '25', 'ug/h'), ...patch, where: 'patch by weight' },
      interval: { value: { words: 'every 72 h', hours: ['72', '72'] }, ...patch },
      maxSingle: { value: { limit: quantity('25', 'ug/h') }, ...patch },
      stocks: { value: [{ words: 'patch 12.5 ug/h' }, { words: 'patch 25 ug/h' }], ...products },
      cautions: {
        value: [
          { words: 'never cut a patch' },
          { words: '12 to 24 h until it works' },
          { words: 'a warm mat speeds it up dangerously' },
          { words: 'keep it away from the ear bandage' },
          { words: 'usual size: under 2.5 kg 12.5, above 25 ug/h' },
          { words: 'uptake is slower and differs much between cats' },
          { words: 'may overheat a cat: watch the temperature' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['unsupervised-children-at-home'] },
            because: 'a patch at home with unwatched children',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
