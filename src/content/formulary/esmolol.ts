import { emergencyFastWideRhythm } from '#content/protocols/emergency-fast-wide-rhythm.ts'
import { asOnSheet, followOnSheet } from '#core/formulary/as-on-sheet.ts'
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

export const esmolol = drug({
  id: 'esmolol',
  name: 'esmolol',
  aliases: [],
  class: 'beta blocker',
  groups: [],
  doses: [
    {
      ...asOnSheet(emergencyFastWideRhythm, 'esmolol', 'dog'),
      interval: { value: { words: 'over 10 min, then the infusion' }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: { value: [{ words: 'fast wide rhythm that two shocks or more did not stop' }], ...merck },
      exclusions: { value: [], ...merck },
    },
    {
      ...followOnSheet(emergencyFastWideRhythm, 'esmolol', 'dog'),
      interval: { value: { words: 'continuous, after the bolus' }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: { value: [{ words: 'only after the bolus of 10 min' }], ...merck },
      exclusions: { value: [], ...merck },
    },
    {
      ...asOnSheet(emergencyFastWideRhythm, 'esmolol', 'cat'),
      interval: { value: { words: 'over 10 min, then the infusion' }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: { value: [{ words: 'fast wide rhythm that two shocks or more did not stop' }], ...merck },
      exclusions: { value: [], ...merck },
    },
    {
      ...followOnSheet(emergencyFastWideRhythm, 'esmolol', 'cat'),
      interval: { value: { words: 'continuous, after the bolus' }, ...merck },
      stocks: { value: [{ strength: quantity('10', 'mg/mL') }], ...products },
      cautions: { value: [{ words: 'only after the bolus of 10 min' }], ...merck },
      exclusions: { value: [], ...merck },
    },
  ],
  none: [],
})
