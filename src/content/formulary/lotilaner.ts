import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const label = {
  sources: ['cfr-21-520-1286'],
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const lotilaner = drug({
  id: 'lotilaner',
  name: 'lotilaner',
  aliases: [],
  class: 'isoxazoline',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antiparasitic',
      routes: ['PO'],
      range: { value: range('20', '20', 'mg/kg'), ...label },
      interval: { value: { words: 'every month' }, ...label },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('56.25', 'mg'), divides: 'unknown' },
          { strength: quantity('112.5', 'mg'), divides: 'unknown' },
          { strength: quantity('225', 'mg'), divides: 'unknown' },
          { strength: quantity('450', 'mg'), divides: 'unknown' },
          { strength: quantity('900', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'the least dose; with food' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
        ],
        ...label,
      },
      exclusions: {
        value: [
          { when: { kind: 'younger-than', months: 2 }, because: 'under 8 weeks' },
          { when: { kind: 'lighter-than', weight: quantity('2', 'kg') }, because: 'under 2 kg' },
        ],
        ...label,
      },
    },
    {
      species: 'cat',
      use: 'antiparasitic',
      routes: ['PO'],
      range: { value: range('6', '6', 'mg/kg'), ...label },
      interval: { value: { words: 'every month' }, ...label },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('12', 'mg'), divides: 'unknown' },
          { strength: quantity('48', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: { value: [{ words: 'the least dose; with food' }], ...label },
      exclusions: {
        value: [
          { when: { kind: 'younger-than', months: 2 }, because: 'under 8 weeks' },
          { when: { kind: 'lighter-than', weight: quantity('0.9', 'kg') }, because: 'under 0.9 kg' },
        ],
        ...label,
      },
    },
  ],
  none: [],
})
