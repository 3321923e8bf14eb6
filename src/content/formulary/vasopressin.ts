import { emergencyNoPulse } from '#content/protocols/emergency-no-pulse.ts'
import { asOnSheet } from '#core/formulary/as-on-sheet.ts'
import { drug, range } from '#core/formulary/drug.ts'
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
  where: '0.4 to 0.9 units/kg',
  known: 'read',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

export const vasopressin = drug({
  id: 'vasopressin',
  name: 'vasopressin',
  aliases: [],
  class: 'vasopressor peptide',
  groups: ['vasopressor'],
  doses: [
    {
      ...asOnSheet(emergencyNoPulse, 'vasopressin', 'dog'),
      otherRanges: [{ value: { ...range('0.4', '0.9', '[iU]/kg'), words: 'earlier table' }, ...earlier }],
      interval: { value: { words: 'every 3 to 5 min' }, ...merck },
      stocks: { value: [{ strength: quantity('20', '[iU]/mL') }], ...products },
      cautions: { value: [{ words: 'instead of epinephrine or beside it' }], ...merck },
      exclusions: { value: [], ...merck },
    },
    {
      ...asOnSheet(emergencyNoPulse, 'vasopressin', 'cat'),
      otherRanges: [{ value: { ...range('0.4', '0.9', '[iU]/kg'), words: 'earlier table' }, ...earlier }],
      interval: { value: { words: 'every 3 to 5 min' }, ...merck },
      stocks: { value: [{ strength: quantity('20', '[iU]/mL') }], ...products },
      cautions: { value: [{ words: 'instead of epinephrine or beside it' }], ...merck },
      exclusions: { value: [], ...merck },
    },
  ],
  none: [],
})
