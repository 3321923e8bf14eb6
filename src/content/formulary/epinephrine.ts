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

const angell = {
  sources: ['angell-2025-recover-2024-summary'],
  where: 'high dose no longer advised',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const epinephrine = drug({
  id: 'epinephrine',
  name: 'epinephrine',
  aliases: ['adrenaline'],
  class: 'catecholamine',
  groups: ['vasopressor'],
  doses: [
    {
      ...asOnSheet(emergencyNoPulse, 'epinephrine', 'dog'),
      interval: { value: { words: 'every 3 to 5 min, that is every other 2-minute round' }, ...merck },
      stocks: {
        value: [
          { strength: quantity('1', 'mg/mL'), words: '1:1000' },
          { strength: quantity('0.1', 'mg/mL'), words: '1:10 000' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'for an arrest; the sheet says what is drawn: quiet-ear emergency' },
          { words: 'the two usual strengths differ tenfold: read the label' },
        ],
        ...angell,
      },
      exclusions: { value: [], ...angell },
      neverByHand: [
        'the high dose of 0.1 mg/kg, which the 2024 guidelines no longer advise',
        'down the tube at this dose: that way takes a larger, diluted one',
      ],
    },
    {
      ...asOnSheet(emergencyNoPulse, 'epinephrine', 'cat'),
      interval: { value: { words: 'every 3 to 5 min, that is every other 2-minute round' }, ...merck },
      stocks: {
        value: [
          { strength: quantity('1', 'mg/mL'), words: '1:1000' },
          { strength: quantity('0.1', 'mg/mL'), words: '1:10 000' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'for an arrest; the sheet says what is drawn: quiet-ear emergency' },
          { words: 'the two usual strengths differ tenfold: read the label' },
        ],
        ...angell,
      },
      exclusions: { value: [], ...angell },
      neverByHand: [
        'the high dose of 0.1 mg/kg, which the 2024 guidelines no longer advise',
        'down the tube at this dose: that way takes a larger, diluted one',
      ],
    },
  ],
  none: [],
})
