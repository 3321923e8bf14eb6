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
  sources: ['standard-emergency-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const glucose = drug({
  id: 'glucose',
  name: 'glucose',
  aliases: ['dextrose'],
  class: 'carbohydrate',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'emergency',
      routes: ['IV'],
      range: { value: range('0.25', '0.5', 'g/kg'), ...texts },
      interval: { value: { words: 'once, then measured again' }, ...texts },
      stocks: { value: [{ strength: quantity('500', 'mg/mL'), words: '50 %' }], ...products },
      cautions: {
        value: [
          { words: 'small, young and toy patients run low first' },
          { words: 'dilute the 50 % product with at least two parts of fluid' },
        ],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['the 50 % product undiluted into a small vein'],
    },
    {
      species: 'cat',
      use: 'emergency',
      routes: ['IV'],
      range: { value: range('0.25', '0.5', 'g/kg'), ...texts },
      interval: { value: { words: 'once, then measured again' }, ...texts },
      stocks: { value: [{ strength: quantity('500', 'mg/mL'), words: '50 %' }], ...products },
      cautions: { value: [{ words: 'dilute the 50 % product with at least two parts of fluid' }], ...texts },
      exclusions: { value: [], ...texts },
      neverByHand: ['the 50 % product undiluted into a small vein'],
    },
  ],
  none: [],
})
