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

const us = {
  sources: ['cfr-21-522-147'],
  where: 'text of 2024',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const noah = {
  sources: ['noah-atipamezole'],
  where: 'indication and the ketamine rule',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const catAmount = {
  sources: ['noah-atipamezole'],
  where: 'use and ketamine rule were read; the amount is remembered',
  known: 'remembered',
  strength: 'label',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const cpr = {
  sources: ['msd-cpr-table-earlier'],
  where: '0.05 mg/kg or the agonist’s volume',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const recover = {
  sources: ['fletcher-2012'],
  where: '100 ug/kg',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const joinedCpr = {
  sources: ['msd-cpr-table-earlier', 'fletcher-2012'],
  where: 'low end from the first, high end from the second',
  known: 'read',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const atipamezole = drug({
  id: 'atipamezole',
  name: 'atipamezole',
  aliases: [],
  class: 'alpha-2 antagonist',
  groups: ['alpha-2-antagonist'],
  doses: [
    {
      species: 'dog',
      use: 'reversal',
      routes: ['IM'],
      qualifier: 'agonist was IV',
      range: { value: range('3750', '3750', 'ug/m2'), ...us },
      interval: { value: { words: 'once' }, ...us },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'takes the pain relief away too' },
          {
            words:
              'older label: the same volume as the agonist, that is ten times the mass of dexmedetomidine or five times that of medetomidine',
          },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hepatic-disease', 'renal-disease', 'breeding', 'pregnant', 'lactating'] },
            because: 'the UK label bars liver or kidney disease and breeding animals',
          },
          {
            when: { kind: 'given-within', drug: 'ketamine', time: quantity('40', 'min') },
            because: 'within 40 min of ketamine only ketamine is left: stiffness and fits',
          },
        ],
        ...noah,
      },
    },
    {
      species: 'dog',
      use: 'reversal',
      routes: ['IM'],
      qualifier: 'agonist was IM',
      range: { value: range('5000', '5000', 'ug/m2'), ...us },
      interval: { value: { words: 'once' }, ...us },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'takes the pain relief away too' },
          {
            words:
              'older label: the same volume as the agonist, that is ten times the mass of dexmedetomidine or five times that of medetomidine',
          },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hepatic-disease', 'renal-disease', 'breeding', 'pregnant', 'lactating'] },
            because: 'the UK label bars liver or kidney disease and breeding animals',
          },
          {
            when: { kind: 'given-within', drug: 'ketamine', time: quantity('40', 'min') },
            because: 'within 40 min of ketamine only ketamine is left: stiffness and fits',
          },
        ],
        ...noah,
      },
    },
    {
      species: 'cat',
      use: 'reversal',
      routes: ['IM'],
      range: { value: range('25', '100', 'ug/kg'), ...catAmount },
      interval: { value: { words: 'once' }, ...catAmount },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'usually half the dexmedetomidine volume, that is five times its mass' },
          { words: 'not licensed for cats in the US' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'given-within', drug: 'ketamine', time: quantity('40', 'min') },
            because: 'within 40 min of ketamine only ketamine is left: stiffness and fits',
          },
        ],
        ...noah,
      },
    },
    {
      species: 'dog',
      use: 'emergency',
      routes: ['IV', 'IM'],
      range: { value: range('50', '100', 'ug/kg'), ...joinedCpr, known: 'remembered' },
      otherRanges: [
        { value: { ...range('50', '50', 'ug/kg'), words: 'earlier table' }, ...cpr },
        { value: { ...range('100', '100', 'ug/kg'), words: '2012 guideline' }, ...recover },
      ],
      interval: { value: { words: 'once' }, ...joinedCpr },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'resuscitation with an alpha-2 agonist on board' }],
        ...cpr,
      },
      exclusions: {
        value: [],
        ...cpr,
      },
    },
    {
      species: 'cat',
      use: 'emergency',
      routes: ['IV', 'IM'],
      range: { value: range('50', '100', 'ug/kg'), ...joinedCpr, known: 'remembered' },
      otherRanges: [
        { value: { ...range('50', '50', 'ug/kg'), words: 'earlier table' }, ...cpr },
        { value: { ...range('100', '100', 'ug/kg'), words: '2012 guideline' }, ...recover },
      ],
      interval: { value: { words: 'once' }, ...joinedCpr },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'resuscitation with an alpha-2 agonist on board' }],
        ...cpr,
      },
      exclusions: {
        value: [],
        ...cpr,
      },
    },
  ],
  none: [],
})
