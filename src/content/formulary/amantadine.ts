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

export const amantadine = drug({
  id: 'amantadine',
  name: 'amantadine',
  aliases: [],
  class: 'NMDA antagonist',
  groups: ['nmda-antagonist'],
  doses: [
    {
      species: 'dog',
      use: 'analgesia_oral',
      routes: ['PO'],
      range: { value: range('3', '5', 'mg/kg'), ...pain },
      interval: { value: { words: 'every 12 to 24 h', hours: ['12', '24'] }, ...pain },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      tablets: {
        value: [{ strength: quantity('100', 'mg'), divides: 'unknown' }],
        ...products,
      },
      cautions: {
        value: [
          { words: 'for long-standing and nerve pain' },
          { words: 'relative: seizures', when: { kind: 'any-of', words: ['seizure-disorder'] } },
          { words: 'leaves by the kidney', when: { kind: 'any-of', words: ['renal-disease'] } },
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
      use: 'analgesia_oral',
      routes: ['PO'],
      range: { value: range('3', '5', 'mg/kg'), ...pain },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...pain },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      tablets: {
        value: [{ strength: quantity('100', 'mg'), divides: 'unknown' }],
        ...products,
      },
      cautions: {
        value: [
          { words: 'for long-standing and nerve pain' },
          { words: 'relative: seizures', when: { kind: 'any-of', words: ['seizure-disorder'] } },
          { words: 'leaves by the kidney', when: { kind: 'any-of', words: ['renal-disease'] } },
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
