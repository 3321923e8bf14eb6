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

const papich = {
  sources: ['iscaid-texts'],
  where: 'after Papich',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const meropenem = drug({
  id: 'meropenem',
  name: 'meropenem',
  aliases: [],
  class: 'carbapenem',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['IV', 'SC'],
      range: { value: range('8.5', '12', 'mg/kg'), ...papich },
      interval: { value: { words: 'every 8 h into a vein, every 12 h under the skin' }, ...papich },
      stocks: { value: [{ strength: quantity('50', 'mg/mL') }, { strength: quantity('20', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'kept for people: only with proven resistance and a second opinion' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['without a culture'],
    },
  ],
  none: [
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'no dose for the cat was found',
      ...papich,
    },
  ],
})
