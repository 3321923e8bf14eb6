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

const bsava = {
  sources: ['bsava-sedation-protocols'],
  where: 'into muscle 5 to 20 ug/kg; into a vein 1 to 10 (dog)',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const table = {
  sources: ['bsava-table-6-23'],
  where: '10 to 20 ug/kg with an opioid',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const medetomidine = drug({
  id: 'medetomidine',
  name: 'medetomidine',
  aliases: [],
  class: 'alpha-2 agonist',
  groups: ['alpha-2-agonist'],
  doses: [
    {
      species: 'dog',
      use: 'premed',
      routes: ['IM'],
      range: { value: range('5', '20', 'ug/kg'), ...bsava },
      otherRanges: [{ value: { ...range('10', '20', 'ug/kg'), words: 'with an opioid' }, ...table }],
      interval: { value: { words: 'once' }, ...bsava },
      stocks: { value: [{ strength: quantity('1', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'twice the mass of dexmedetomidine for the same effect: never interchange' },
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
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'premed',
      routes: ['IM'],
      range: { value: range('5', '20', 'ug/kg'), ...bsava },
      interval: { value: { words: 'once' }, ...bsava },
      stocks: { value: [{ strength: quantity('1', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'twice the mass of dexmedetomidine for the same effect: never interchange' },
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
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
