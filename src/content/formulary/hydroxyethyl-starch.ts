import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const dogBolus = {
  sources: ['aaha-2020-hypotension'],
  where: 'colloid 1 to 5 mL/kg',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const catBolus = {
  sources: ['aaha-2020-hypotension', 'tvp-2018-fluids'],
  where: '1 to 5 in the first; cats 3 in the second',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const ceiling = {
  sources: ['aaha-aafp-2013-fluids'],
  where: 'page 10: up to 20 mL/kg in 24 h; cats 10 to 20',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const aaha = {
  sources: ['aaha-2020-hypotension'],
  where: 'colloid 1 to 5 mL/kg',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const hydroxyethylStarch = drug({
  id: 'hydroxyethyl-starch',
  name: 'hydroxyethyl starch',
  aliases: ['hetastarch'],
  class: 'synthetic colloid',
  groups: ['colloid'],
  doses: [
    {
      species: 'dog',
      use: 'fluid_bolus',
      routes: ['IV'],
      range: { value: range('1', '5', 'mL/kg'), ...dogBolus },
      interval: { value: { words: 'over 15 min' }, ...dogBolus },
      maxCumulative: { value: { limit: quantity('20', 'mL/kg'), per: 'day', words: '20 mL/kg in 24 h' }, ...ceiling },
      stocks: { value: [{ words: '6 %' }], ...products },
      cautions: { value: [{ words: 'may harm kidney and clotting' }], ...dogBolus },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['sepsis'] }, because: 'sepsis: the kidney suffers' },
          { when: { kind: 'any-of', words: ['renal-disease'] }, because: 'kidney disease' },
          { when: { kind: 'any-of', words: ['bleeding-disorder'] }, because: 'a bleeding disorder' },
        ],
        ...dogBolus,
      },
    },
    {
      species: 'cat',
      use: 'fluid_bolus',
      routes: ['IV'],
      range: { value: range('1', '3', 'mL/kg'), ...catBolus },
      otherRanges: [{ value: { ...range('1', '5', 'mL/kg'), words: 'guideline page, dog and cat together' }, ...aaha }],
      interval: { value: { words: 'over 15 to 30 min' }, ...catBolus },
      maxCumulative: {
        value: { limit: quantity('10', 'mL/kg'), per: 'day', words: '10 mL/kg in 24 h; the source says 10 to 20' },
        ...ceiling,
      },
      stocks: { value: [{ words: '6 %' }], ...products },
      cautions: { value: [{ words: 'may harm kidney and clotting' }], ...catBolus },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['sepsis'] }, because: 'sepsis: the kidney suffers' },
          { when: { kind: 'any-of', words: ['renal-disease'] }, because: 'kidney disease' },
          { when: { kind: 'any-of', words: ['bleeding-disorder'] }, because: 'a bleeding disorder' },
        ],
        ...catBolus,
      },
    },
  ],
  none: [],
})
