import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const texts = {
  sources: ['neurology-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'low',
  checked: '2026-11-29',
} as const

export const meclozine = drug({
  id: 'meclozine',
  name: 'meclozine',
  aliases: ['meclizine'],
  class: 'antihistamine, for balance',
  groups: ['antiemetic'],
  doses: [
    {
      species: 'dog',
      use: 'antiemetic',
      routes: ['PO'],
      range: { value: range('12.5', '25', 'mg/{animal}'), ...texts },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...texts },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('12.5', 'mg'), divides: 'unknown' },
          { strength: quantity('25', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'for sickness from the inner ear after bulla surgery' }, { words: 'sleepy' }],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['with glaucoma'],
    },
    {
      species: 'cat',
      use: 'antiemetic',
      routes: ['PO'],
      range: { value: range('6.25', '12.5', 'mg/{animal}'), ...texts },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...texts },
      stocks: { value: [], ...products },
      tablets: { value: [{ strength: quantity('12.5', 'mg'), divides: 'unknown' }], ...products },
      cautions: {
        value: [{ words: 'for sickness from the inner ear after bulla surgery' }, { words: 'sleepy' }],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['with glaucoma'],
    },
  ],
  none: [],
})
