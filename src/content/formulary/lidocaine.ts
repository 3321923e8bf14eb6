import { emergencyFastWideRhythm } from '#content/protocols/emergency-fast-wide-rhythm.ts'
import { asOnSheet } from '#core/formulary/as-on-sheet.ts'
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

const layne = {
  sources: ['layne-2019'],
  where: 'limit 5 mg/kg in dogs',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const vasg = {
  sources: ['vasg-local-2004'],
  where: 'dog 1 to 5, cat 1 to 2.5 mg/kg',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const vasgOther = {
  sources: ['vasg-second-page'],
  where: '1 to 4 mg/kg in both',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const vetTimes = {
  sources: ['vet-times-iv-anaesthesia'],
  where: '25 to 50 ug/kg/min, dogs only',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const pablo = {
  sources: ['pablo-cri-florida'],
  where: 'dog 20 to 50; not for cats',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const wingfield = {
  sources: ['wingfield-cri-csu'],
  where: '50 to 100, against arrhythmia',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const merckCpr = {
  sources: ['merck-cpr-table'],
  where: 'pulseless fast wide rhythm, after two shocks or more',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const house = {
  sources: ['house-judgement'],
  where: 'washout window',
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const barred = {
  sources: ['vet-times-iv-anaesthesia', 'pablo-cri-florida'],
  where: 'one says dogs only, the other not for cats; a teaching blog gives up to 10 ug/kg/min with care',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const earlierTable = {
  sources: ['msd-cpr-table-earlier'],
  where: '2 to 4 mg/kg',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const lidocaine = drug({
  id: 'lidocaine',
  name: 'lidocaine',
  aliases: ['lignocaine'],
  class: 'amide local anaesthetic; class Ib antiarrhythmic',
  groups: ['local-anaesthetic'],
  localAnaesthetic: {
    limits: {
      dog: { value: quantity('5', 'mg/kg'), ...layne },
      cat: { value: quantity('2.5', 'mg/kg'), ...vasg },
    },
    otherLimits: [{ species: 'cat', value: quantity('4', 'mg/kg'), ...vasgOther }],
    washout: { value: quantity('3', 'h'), ...house },
  },
  doses: [
    {
      species: 'dog',
      use: 'local_block',
      routes: ['perineural', 'infiltration'],
      range: { value: range('1', '4', 'mg/kg'), ...vasgOther },
      otherRanges: [{ value: { ...range('1', '5', 'mg/kg'), words: 'older page' }, ...vasg }],
      interval: { value: { words: 'once' }, ...vasgOther },
      stocks: { value: [{ strength: quantity('20', 'mg/mL') }, { strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'aspirate before every injection' },
          { words: 'every site and every form counts toward one limit' },
          { words: 'may block the facial nerve: lubricate the eye, and do not read a lost blink as a palsy yet' },
          { words: '20 % lipid emulsion at hand' },
          {
            words: 'a lower limit is wise',
            when: { kind: 'any-of', words: ['sepsis', 'hypoproteinaemia', 'hepatic-disease'] },
          },
          { words: 'works in minutes, for 1 to 2 h' },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['the block dose into a vein', 'through infected or tumour tissue (relative)'],
    },
    {
      species: 'cat',
      use: 'local_block',
      routes: ['perineural', 'infiltration'],
      range: { value: range('1', '2.5', 'mg/kg'), ...vasg },
      otherRanges: [{ value: { ...range('1', '4', 'mg/kg'), words: 'another page' }, ...vasgOther }],
      interval: { value: { words: 'once' }, ...vasg },
      stocks: { value: [{ strength: quantity('20', 'mg/mL') }, { strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'aspirate before every injection' },
          { words: 'every site and every form counts toward one limit' },
          { words: 'may block the facial nerve: lubricate the eye, and do not read a lost blink as a palsy yet' },
          { words: '20 % lipid emulsion at hand' },
          {
            words: 'a lower limit is wise',
            when: { kind: 'any-of', words: ['sepsis', 'hypoproteinaemia', 'hepatic-disease'] },
          },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['the block dose into a vein'],
    },
    {
      species: 'dog',
      use: 'cri',
      routes: ['IV'],
      range: { value: range('25', '50', 'ug/kg/min'), ...vetTimes },
      otherRanges: [
        { value: { ...range('20', '50', 'ug/kg/min'), words: 'teaching text' }, ...pablo },
        { value: { ...range('50', '100', 'ug/kg/min'), words: 'against arrhythmia' }, ...wingfield },
      ],
      interval: { value: { words: 'continuous' }, ...vetTimes },
      loading: { value: range('1', '2', 'mg/kg'), ...texts },
      stocks: { value: [{ strength: quantity('20', 'mg/mL') }, { strength: quantity('10', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'load with 1 to 2 mg/kg slowly' },
          { words: 'nausea, tremor, seizure: stop' },
          { words: 'stop when a large block is given too' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['heart-block'] }, because: 'third-degree heart block' },
          {
            when: { kind: 'any-of', words: ['local-anaesthetic-toxicity'] },
            because: 'local-anaesthetic toxicity is suspected',
          },
        ],
        ...texts,
      },
    },
    {
      ...asOnSheet(emergencyFastWideRhythm, 'lidocaine', 'dog'),
      otherRanges: [{ value: { ...range('2', '4', 'mg/kg'), words: 'earlier table' }, ...earlierTable }],
      interval: {
        value: { words: 'once; may be repeated to 8 mg/kg in all, blocks included (the repeat is remembered)' },
        ...merckCpr,
      },
      maxCumulative: { value: { per: 'animal', words: '8 mg/kg in all, local blocks included' }, ...merckCpr },
      stocks: { value: [{ strength: quantity('20', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'fast wide rhythm without pulse after two shocks; with a pulse, slowly' }],
        ...merckCpr,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['local-anaesthetic-toxicity'] },
            because: 'the arrest may come from local anaesthetic',
          },
        ],
        ...merckCpr,
      },
    },
  ],
  none: [
    {
      species: 'cat',
      use: 'cri',
      why: 'never',
      because: 'an intravenous infusion depresses the cat’s heart more than it spares anaesthetic',
      ...barred,
    },
    {
      species: 'cat',
      use: 'emergency',
      why: 'no-dose-found',
      because: 'the emergency table read gives the dog’s dose; cats have amiodarone there',
      ...merckCpr,
    },
  ],
})
