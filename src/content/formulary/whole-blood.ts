import { drug, range } from '#core/formulary/drug.ts'

const cornell = {
  sources: ['cornell-transfusion-guidelines'],
  where: 'fresh whole blood; no species named',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const texts = {
  sources: ['transfusion-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const stocks = { value: [{ words: 'PCV of the donor, measured' }], ...texts }
const bag = { words: 'through a filter; in the line saline only, nothing with calcium' } as const

/** Mostly worked out from a goal of PCV; the range says what is usual in one day. */
export const wholeBlood = drug({
  id: 'whole-blood',
  name: 'whole blood',
  aliases: ['fresh whole blood'],
  class: 'blood product',
  groups: ['red-cells'],
  doses: [
    {
      species: 'dog',
      use: 'blood_product',
      routes: ['IV', 'IO'],
      range: { value: range('12', '20', 'mL/kg'), ...cornell },
      interval: { value: { words: 'every 24 h' }, ...cornell },
      stocks,
      cautions: { value: [{ words: 'type for DEA 1; cross-match from the second transfusion on' }, bag], ...texts },
      exclusions: { value: [], ...texts },
      neverByHand: ['a second transfusion without a cross-match'],
    },
    {
      species: 'cat',
      use: 'blood_product',
      routes: ['IV', 'IO'],
      range: { value: range('12', '20', 'mL/kg'), ...cornell },
      interval: { value: { words: 'every 24 h' }, ...cornell },
      stocks,
      cautions: { value: [{ words: 'type donor and recipient, for the first transfusion too' }, bag], ...texts },
      exclusions: { value: [], ...texts },
      neverByHand: ['blood of an untyped donor, or into an untyped cat'],
    },
  ],
  none: [],
})
