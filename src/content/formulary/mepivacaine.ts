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

const vasg = {
  sources: ['vasg-local-2004'],
  where: 'limits 5 (dog) and 2.5 mg/kg (cat)',
  known: 'read',
  strength: 'web',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const house = {
  sources: ['house-judgement'],
  where: 'washout window, taken as for lidocaine',
  known: 'house',
  strength: 'practice',
  confidence: 'low',
  checked: '2026-11-25',
} as const

export const mepivacaine = drug({
  id: 'mepivacaine',
  name: 'mepivacaine',
  aliases: [],
  class: 'amide local anaesthetic',
  groups: ['local-anaesthetic'],
  localAnaesthetic: {
    limits: {
      dog: { value: quantity('5', 'mg/kg'), ...vasg },
      cat: { value: quantity('2.5', 'mg/kg'), ...vasg },
    },
    washout: { value: quantity('3', 'h'), ...house },
  },
  doses: [
    {
      species: 'dog',
      use: 'local_block',
      routes: ['perineural'],
      range: { value: range('2', '5', 'mg/kg'), ...vasg },
      interval: { value: { words: 'once' }, ...vasg },
      stocks: { value: [{ strength: quantity('20', 'mg/mL') }], ...products },
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
    {
      species: 'cat',
      use: 'local_block',
      routes: ['perineural'],
      range: { value: range('1', '2.5', 'mg/kg'), ...vasg },
      interval: { value: { words: 'once' }, ...vasg },
      stocks: { value: [{ strength: quantity('20', 'mg/mL') }], ...products },
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
