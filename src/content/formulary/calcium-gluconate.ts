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

export const calciumGluconate = drug({
  id: 'calcium-gluconate',
  name: 'calcium gluconate',
  aliases: [],
  class: 'electrolyte',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'emergency',
      routes: ['IV'],
      range: { value: range('50', '100', 'mg/kg'), ...texts },
      interval: { value: { words: 'over 10 min with the heart on the screen' }, ...texts },
      stocks: { value: [{ strength: quantity('100', 'mg/mL'), words: '10 %' }], ...products },
      cautions: {
        value: [
          {
            words: 'only for low calcium that was measured, dangerous high potassium, or after much blood with citrate',
          },
          { words: 'stop when the heart slows' },
        ],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['as a routine in an arrest', 'in one line with bicarbonate or blood'],
    },
  ],
  none: [{ species: 'cat', why: 'no-dose-found', because: 'the formulary read has no row for cats', ...texts }],
})
