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

export const packedRedCells = drug({
  id: 'packed-red-cells',
  name: 'packed red cells',
  aliases: ['packed red blood cells', 'packed cells'],
  class: 'blood product',
  groups: ['red-cells'],
  doses: [
    {
      species: 'dog',
      use: 'blood_product',
      routes: ['IV'],
      range: { value: range('10', '15', 'mL/kg'), ...texts },
      interval: { value: { words: 'over 1 to 4 h, faster while bleeding' }, ...texts },
      maxCumulative: { value: { per: 'animal', words: 'no faster than 20 mL/kg/h unless bleeding' }, ...texts },
      stocks: { value: [{ words: 'packed cell volume 60 to 80 %' }], ...products },
      cautions: {
        value: [
          { words: 'type (DEA 1) and cross-match; a filter' },
          { words: 'the volume for a wanted packed cell volume: quiet-ear calc, transfusion_volume' },
        ],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['a second transfusion without a cross-match', 'through one line with fluid that holds calcium'],
    },
    {
      species: 'cat',
      use: 'blood_product',
      routes: ['IV'],
      range: { value: range('5', '10', 'mL/kg'), ...texts },
      interval: { value: { words: 'over 1 to 4 h' }, ...texts },
      stocks: { value: [{ words: 'packed cell volume 60 %' }], ...products },
      cautions: {
        value: [
          { words: 'AB type always, before the first transfusion too' },
          { words: 'the volume for a wanted packed cell volume: quiet-ear calc, transfusion_volume' },
        ],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['from or to a cat that was not typed', 'through one line with fluid that holds calcium'],
    },
  ],
  none: [],
})
