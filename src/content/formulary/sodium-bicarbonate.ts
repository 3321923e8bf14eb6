import { emergencyNoPulse } from '#content/protocols/emergency-no-pulse.ts'
import { asOnSheet } from '#core/formulary/as-on-sheet.ts'
import { drug } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const merck = {
  sources: ['merck-cpr-table'],
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const texts = {
  sources: ['anaesthesia-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

export const sodiumBicarbonate = drug({
  id: 'sodium-bicarbonate',
  name: 'sodium bicarbonate',
  aliases: ['bicarbonate'],
  class: 'alkaliniser',
  groups: [],
  doses: [
    {
      ...asOnSheet(emergencyNoPulse, 'sodium-bicarbonate', 'dog'),
      interval: { value: { words: 'once' }, ...merck },
      stocks: { value: [{ strength: quantity('1', 'mmol/mL'), words: '8.4 %' }], ...products },
      cautions: {
        value: [
          { words: 'late only: after 15 min with a pH below 7.0, or for high potassium' },
          { words: 'only while the animal is ventilated' },
        ],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['in one line with calcium, epinephrine, dopamine, dobutamine or norepinephrine'],
    },
    {
      ...asOnSheet(emergencyNoPulse, 'sodium-bicarbonate', 'cat'),
      interval: { value: { words: 'once' }, ...merck },
      stocks: { value: [{ strength: quantity('1', 'mmol/mL'), words: '8.4 %' }], ...products },
      cautions: {
        value: [
          { words: 'late only: after 15 min with a pH below 7.0, or for high potassium' },
          { words: 'only while the animal is ventilated' },
        ],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['in one line with calcium, epinephrine, dopamine, dobutamine or norepinephrine'],
    },
  ],
  none: [],
})
