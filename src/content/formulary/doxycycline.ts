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

const dermatology = {
  sources: ['small-animal-dermatology-3'],
  where: '5 twice a day',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const medicine = {
  sources: ['medicine-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const doxycycline = drug({
  id: 'doxycycline',
  name: 'doxycycline',
  aliases: [],
  class: 'tetracycline',
  groups: ['tetracycline'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('5', '10', 'mg/kg'), ...aaha },
      otherRanges: [{ value: { ...range('5', '5', 'mg/kg'), words: 'twice a day' }, ...dermatology }],
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...aaha },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('20', 'mg'), divides: 'unknown' },
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
          { strength: quantity('300', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'with food and water' },
          { words: 'once a day at 10 mg/kg' },
          { words: 'listed by some for ABCB1', when: { kind: 'any-of', words: ['abcb1-carrier', 'abcb1-mutant'] } },
          { words: 'growing teeth (relative)', when: { kind: 'younger-than', months: 6 } },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('5', '10', 'mg/kg'), ...medicine },
      interval: { value: { words: 'every 12 to 24 h', hours: ['12', '24'] }, ...medicine },
      maxCumulative: { value: { limit: quantity('10', 'mg/kg'), per: 'day', words: '10 mg/kg a day' }, ...medicine },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('20', 'mg'), divides: 'unknown' },
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'always followed by food or water: dry tablets scar the gullet' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['a dry-swallowed hyclate tablet'],
    },
  ],
  none: [],
})
