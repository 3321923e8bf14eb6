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
  where: 'limit 2 mg/kg in dogs',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const vasg = {
  sources: ['vasg-local-2004'],
  where: '1 to 2 mg/kg, never into a vein',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const grubb = {
  sources: ['grubb-lobprise-2020'],
  where: 'cat 1 mg/kg; page seen, table not visible',
  known: 'remembered',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const radlinsky = {
  sources: ['radlinsky-2005'],
  where: 'abstract',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const house = {
  sources: ['house-judgement'],
  where: 'washout window; daily warning mark',
  known: 'house',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const liposomal = {
  sources: ['cfr-21-522-224'],
  where: 'dog 5.3 mg/kg (0.4 mL/kg) once for stifle surgery; cat 5.3 mg/kg for each forelimb, distal nerve block',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

/** The cat's label knows one nerve block of the forelimb only. */
const liposomalCat = { ...liposomal, confidence: 'medium' } as const

const liposomalTexts = {
  sources: ['anaesthesia-texts'],
  where: 'expanding and mixing',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const liposomalHouse = {
  sources: ['house-judgement', 'cfr-21-522-224'],
  where: 'counted for as long as the label lets it act, 72 h',
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-29',
} as const

export const bupivacaine = drug({
  id: 'bupivacaine',
  name: 'bupivacaine',
  aliases: [],
  class: 'amide local anaesthetic',
  groups: ['local-anaesthetic'],
  localAnaesthetic: {
    limits: {
      dog: { value: quantity('2', 'mg/kg'), ...layne },
      cat: { value: quantity('1', 'mg/kg'), ...grubb },
    },
    otherLimits: [{ species: 'cat', value: quantity('2', 'mg/kg'), ...vasg }],
    washout: { value: quantity('8', 'h'), ...house },
    formulations: [
      {
        formulation: 'liposomal, 13.3 mg/mL',
        limits: {
          dog: { value: quantity('5.3', 'mg/kg'), ...liposomal },
          cat: { value: quantity('5.3', 'mg/kg'), ...liposomalCat },
        },
        washout: { value: quantity('72', 'h'), ...liposomalHouse },
      },
    ],
  },
  doses: [
    {
      species: 'dog',
      use: 'local_block',
      routes: ['perineural', 'splash', 'infiltration'],
      range: { value: range('1', '2', 'mg/kg'), ...vasg },
      interval: { value: { words: 'once, not sooner than 6 to 8 h' }, ...vasg },
      stocks: {
        value: [
          { strength: quantity('5', 'mg/mL') },
          { strength: quantity('2.5', 'mg/mL') },
          { strength: quantity('7.5', 'mg/mL') },
        ],
        ...products,
      },
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
          { words: 'works after 20 to 30 min, for 3 to 6 h' },
          { words: 'poisonous to the heart' },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['into a vein', 'regional block of a limb by vein'],
    },
    {
      species: 'cat',
      use: 'local_block',
      routes: ['perineural', 'splash', 'infiltration'],
      range: { value: range('0.5', '1', 'mg/kg'), ...grubb },
      otherRanges: [{ value: { ...range('1', '2', 'mg/kg'), words: 'older page; 2 is never passed' }, ...vasg }],
      interval: { value: { words: 'once, not sooner than 6 to 8 h' }, ...grubb },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }, { strength: quantity('2.5', 'mg/mL') }], ...products },
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
          { words: '10 mg/kg by mistake made a cat fit and collapse' },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['into a vein'],
    },
    {
      species: 'dog',
      use: 'wound_infusion',
      routes: ['wound-catheter'],
      range: { value: range('0.13', '0.21', 'mg/kg/h'), ...radlinsky },
      interval: { value: { words: 'continuous, up to 48 h' }, ...radlinsky },
      maxCumulative: {
        value: {
          limit: quantity('5', 'mg/kg'),
          per: 'day',
          asks: true,
          words: 'counts toward the animal’s limit; the house mark is 5 mg/kg in 24 h',
        },
        ...house,
      },
      stocks: { value: [{ strength: quantity('2.5', 'mg/mL') }, { strength: quantity('5', 'mg/mL') }], ...products },
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
          {
            words:
              'the ear trial found no drug in the blood, no better pain score than morphine, and a slower recovery at 2 h',
          },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['through a contaminated wound catheter'],
    },
    {
      species: 'dog',
      use: 'local_block',
      routes: ['infiltration'],
      qualifier: 'at closure',
      formulation: 'liposomal, 13.3 mg/mL',
      range: { value: range('5.3', '5.3', 'mg/kg'), ...liposomal },
      interval: { value: { words: 'once, acts for up to 72 h' }, ...liposomal },
      stocks: { value: [{ strength: quantity('13.3', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'licensed for stifle surgery: in the ear it is off the label' },
          { words: 'may be expanded with saline or lactated Ringer up to one to one; it must reach every layer' },
          { words: 'it fills the limit of the animal alone: no other local anaesthetic beside it' },
          { words: 'may block the facial nerve: lubricate the eye, and do not read a lost blink as a palsy yet' },
        ],
        ...liposomalTexts,
      },
      exclusions: { value: [], ...liposomalTexts },
      neverByHand: [
        'mixed with lidocaine or another local anaesthetic, water or an antiseptic',
        'into a joint or around a nerve without a specialist',
        'into a vein',
      ],
    },
    {
      species: 'cat',
      use: 'local_block',
      routes: ['perineural'],
      qualifier: '4-point distal nerve block, label only',
      formulation: 'liposomal, 13.3 mg/mL',
      range: { value: range('5.3', '5.3', 'mg/kg'), ...liposomalCat },
      interval: { value: { words: 'once' }, ...liposomalCat },
      maxCumulative: {
        value: { per: 'animal', words: '10.6 mg/kg on the label, both forelimbs together; elsewhere once 5.3 mg/kg' },
        ...liposomalCat,
      },
      stocks: { value: [{ strength: quantity('13.3', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'the label knows the nerve block of the forelimb only; an ear wound is off the label' },
          { words: 'it fills the limit of the animal alone: no other local anaesthetic beside it' },
        ],
        ...liposomalTexts,
      },
      exclusions: { value: [], ...liposomalTexts },
      neverByHand: ['mixed with another local anaesthetic, water or an antiseptic', 'into a vein'],
    },
  ],
  none: [
    {
      species: 'cat',
      use: 'wound_infusion',
      why: 'no-dose-found',
      because: 'no data for a wound catheter in cats were found',
      ...radlinsky,
    },
  ],
})
