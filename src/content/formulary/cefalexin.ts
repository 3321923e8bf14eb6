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

const aaha = {
  sources: ['aaha-2023-allergic-skin'],
  where: 'table 4',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const uk = {
  sources: ['cefalexin-uk-spc'],
  where: '15 mg/kg twice a day, doubled where needed',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const cat = {
  sources: ['cefalexin-uk-spc', 'medicine-texts'],
  where: '15 by the label, texts to 30',
  known: 'remembered',
  strength: 'label',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const cefalexin = drug({
  id: 'cefalexin',
  name: 'cefalexin',
  aliases: ['cephalexin'],
  class: 'first-generation cephalosporin',
  groups: ['cephalosporin'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('22', '30', 'mg/kg'), ...aaha },
      otherRanges: [{ value: { ...range('15', '30', 'mg/kg'), words: 'UK label, doubled where needed' }, ...uk }],
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...aaha },
      stocks: { value: [{ strength: quantity('100', 'mg/mL') }, { strength: quantity('50', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('75', 'mg'), divides: 'unknown' },
          { strength: quantity('250', 'mg'), divides: 'unknown' },
          { strength: quantity('300', 'mg'), divides: 'unknown' },
          { strength: quantity('500', 'mg'), divides: 'unknown' },
          { strength: quantity('600', 'mg'), divides: 'unknown' },
          { strength: quantity('1000', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'upsets the gut' }, { words: 'no cover for Pseudomonas or enterococci' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['penicillin-anaphylaxis', 'cephalosporin-anaphylaxis'] },
            because: 'anaphylaxis to a penicillin or cephalosporin',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('15', '30', 'mg/kg'), ...cat },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...cat },
      stocks: { value: [{ strength: quantity('100', 'mg/mL') }, { strength: quantity('50', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('75', 'mg'), divides: 'unknown' },
          { strength: quantity('250', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'upsets the gut' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['penicillin-anaphylaxis', 'cephalosporin-anaphylaxis'] },
            because: 'anaphylaxis to a penicillin or cephalosporin',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
