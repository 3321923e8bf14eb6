import { emergencyFastWideRhythm } from '#content/protocols/emergency-fast-wide-rhythm.ts'
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

const earlier = {
  sources: ['msd-cpr-table-earlier'],
  where: '5 mg/kg; the current table lists cats only',
  known: 'read',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

export const amiodarone = drug({
  id: 'amiodarone',
  name: 'amiodarone',
  aliases: [],
  class: 'class III antiarrhythmic',
  groups: [],
  doses: [
    {
      ...asOnSheet(emergencyFastWideRhythm, 'amiodarone', 'cat'),
      interval: { value: { words: 'once' }, ...merck },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }], ...products },
      cautions: { value: [{ words: 'fast wide rhythm without pulse that shocks did not stop' }], ...merck },
      exclusions: { value: [], ...merck },
    },
    {
      ...asOnSheet(emergencyFastWideRhythm, 'amiodarone', 'dog'),
      interval: { value: { words: 'once' }, ...earlier },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'second choice behind lidocaine' },
          { words: 'the product with polysorbate drops the pressure of dogs as in an allergy' },
        ],
        ...earlier,
      },
      exclusions: { value: [], ...earlier },
      neverByHand: ['a product with polysorbate 80 or benzyl alcohol in a dog with a pulse'],
    },
  ],
  none: [],
})
