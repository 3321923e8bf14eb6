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

const grubb = {
  sources: ['grubb-lobprise-2020', 'wsava-2022-pain'],
  known: 'remembered',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const grubbCat = {
  sources: ['grubb-lobprise-2020'],
  known: 'remembered',
  strength: 'study',
  confidence: 'low',
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

export const ropivacaine = drug({
  id: 'ropivacaine',
  name: 'ropivacaine',
  aliases: [],
  class: 'amide local anaesthetic',
  groups: ['local-anaesthetic'],
  localAnaesthetic: {
    limits: {
      dog: { value: quantity('3', 'mg/kg'), ...grubb },
      cat: { value: quantity('2', 'mg/kg'), ...grubbCat },
    },
    washout: { value: quantity('8', 'h'), ...house },
  },
  doses: [
    {
      species: 'dog',
      use: 'local_block',
      routes: ['perineural', 'splash'],
      range: { value: range('1', '3', 'mg/kg'), ...grubb },
      interval: { value: { words: 'once, not sooner than 6 h' }, ...grubb },
      stocks: {
        value: [
          { strength: quantity('5', 'mg/mL') },
          { strength: quantity('7.5', 'mg/mL') },
          { strength: quantity('10', 'mg/mL') },
          { strength: quantity('2', 'mg/mL') },
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
          { words: 'kinder to the heart than bupivacaine' },
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
      species: 'cat',
      use: 'local_block',
      routes: ['perineural', 'splash'],
      range: { value: range('0.5', '1.5', 'mg/kg'), ...grubbCat },
      interval: { value: { words: 'once, not sooner than 6 h' }, ...grubbCat },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }, { strength: quantity('2', 'mg/mL') }], ...products },
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
      neverByHand: ['into a vein'],
    },
  ],
  none: [],
})
