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

const gruen = {
  sources: ['gruen-2014'],
  where: 'paper seen, dose paragraph not visible',
  known: 'remembered',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const cats = {
  sources: ['trazodone-cat-studies'],
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const trazodone = drug({
  id: 'trazodone',
  name: 'trazodone',
  aliases: [],
  class: 'serotonin antagonist and reuptake inhibitor',
  groups: ['serotonergic'],
  doses: [
    {
      species: 'dog',
      use: 'anxiolytic',
      routes: ['PO'],
      range: { value: range('3', '7', 'mg/kg'), ...gruen },
      interval: { value: { words: 'every 8 to 12 h', hours: ['8', '12'] }, ...gruen },
      maxSingle: {
        value: { limit: quantity('300', 'mg'), also: quantity('10', 'mg/kg'), words: 'per dose, whichever is less' },
        ...gruen,
      },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
          { strength: quantity('150', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'helps to keep a dog quiet after surgery' },
          { words: 'never over 10 mg/kg in one dose' },
          { words: 'with dexmedetomidine or isoflurane the pressure falls more' },
        ],
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
    {
      species: 'cat',
      use: 'anxiolytic',
      routes: ['PO'],
      range: { value: range('5', '10', 'mg/kg'), ...cats },
      interval: { value: { words: 'once' }, ...cats },
      maxSingle: { value: { limit: quantity('100', 'mg'), words: 'per cat' }, ...cats },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'sleepiest after about 2 h' }],
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
