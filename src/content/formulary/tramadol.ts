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

const pain = {
  sources: ['aaha-2022-pain', 'wsava-2022-pain'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const tramadol = drug({
  id: 'tramadol',
  name: 'tramadol',
  aliases: [],
  class: 'atypical opioid',
  groups: ['serotonergic'],
  doses: [
    {
      species: 'dog',
      use: 'analgesia_oral',
      routes: ['PO'],
      range: { value: range('4', '6', 'mg/kg'), ...pain },
      interval: { value: { words: 'every 6 to 8 h', hours: ['6', '8'] }, ...pain },
      stocks: { value: [], ...products },
      tablets: {
        value: [{ strength: quantity('50', 'mg'), divides: 'unknown' }],
        ...products,
      },
      cautions: {
        value: [{ words: 'weak evidence in dogs' }],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['seizure-disorder'] }, because: 'seizures' },
          {
            when: { kind: 'any-of', words: ['mao-inhibitor-treatment'] },
            because: 'treated with an MAO inhibitor (selegiline, amitraz)',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'analgesia_oral',
      routes: ['PO'],
      range: { value: range('1', '2', 'mg/kg'), ...pain },
      interval: { value: { words: 'every 8 to 12 h', hours: ['8', '12'] }, ...pain },
      stocks: { value: [], ...products },
      tablets: {
        value: [{ strength: quantity('50', 'mg'), divides: 'unknown' }],
        ...products,
      },
      cautions: {
        value: [{ words: 'bitter; wide pupils, distress' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['mao-inhibitor-treatment'] },
            because: 'treated with an MAO inhibitor (selegiline, amitraz)',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
