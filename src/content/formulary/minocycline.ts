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

const aaha = {
  sources: ['aaha-2023-allergic-skin'],
  where: 'table 4',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const cat = {
  sources: ['papich-minocycline-cat'],
  known: 'remembered',
  strength: 'study',
  confidence: 'low',
  checked: '2026-11-25',
} as const

export const minocycline = drug({
  id: 'minocycline',
  name: 'minocycline',
  aliases: [],
  class: 'tetracycline',
  groups: ['tetracycline'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('5', '10', 'mg/kg'), ...aaha },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...aaha },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'vomiting; better absorbed fasted' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('8.8', '8.8', 'mg/kg'), ...cat },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...cat },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'always followed by water' }],
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
