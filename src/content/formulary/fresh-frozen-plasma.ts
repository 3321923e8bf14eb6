import { drug, range } from '#core/formulary/drug.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const texts = {
  sources: ['transfusion-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const freshFrozenPlasma = drug({
  id: 'fresh-frozen-plasma',
  name: 'fresh frozen plasma',
  aliases: ['plasma', 'FFP'],
  class: 'blood product',
  groups: ['plasma'],
  doses: [
    {
      species: 'dog',
      use: 'blood_product',
      routes: ['IV'],
      range: { value: range('10', '20', 'mL/kg'), ...texts },
      interval: { value: { words: 'over 1 to 4 h' }, ...texts },
      stocks: { value: [{ words: 'thawed' }], ...products },
      cautions: { value: [{ words: 'for failing clotting and bleeding' }], ...texts },
      exclusions: { value: [], ...texts },
    },
  ],
  none: [{ species: 'cat', why: 'no-dose-found', because: 'the formulary read has no row for cats', ...texts }],
})
