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
  where: '11 once a day, 22 for deep infection',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const cat = {
  sources: ['cfr-21-520-446'],
  where: 'label 11 to 33 mg/kg once a day; the band is that of the dog table',
  known: 'remembered',
  strength: 'label',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const clindamycin = drug({
  id: 'clindamycin',
  name: 'clindamycin',
  aliases: [],
  class: 'lincosamide',
  groups: ['lincosamide'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('5.5', '11', 'mg/kg'), ...aaha },
      otherRanges: [{ value: { ...range('11', '22', 'mg/kg'), words: 'once a day' }, ...dermatology }],
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...aaha },
      stocks: { value: [{ strength: quantity('25', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('25', 'mg'), divides: 'unknown' },
          { strength: quantity('75', 'mg'), divides: 'unknown' },
          { strength: quantity('150', 'mg'), divides: 'unknown' },
          { strength: quantity('300', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'for bulla, bone and anaerobes' },
          { words: 'a D-test for staphylococci' },
          { words: 'follow with water' },
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
      range: { value: range('5.5', '11', 'mg/kg'), ...cat },
      otherRanges: [{ value: { ...range('11', '33', 'mg/kg'), words: 'label, once a day' }, ...cat }],
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...cat },
      stocks: { value: [{ strength: quantity('25', 'mg/mL') }], ...products },
      tablets: {
        value: [
          { strength: quantity('25', 'mg'), divides: 'unknown' },
          { strength: quantity('75', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'burns the gullet: follow with food or water' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
  ],
  none: [],
})
