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
  sources: ['aaha-2023-allergic-skin', 'small-animal-dermatology-3'],
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const cat = {
  sources: ['small-animal-dermatology-3'],
  known: 'read',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const cap = {
  sources: ['medicine-texts'],
  where: 'the common cap of 50 mg per cat',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const eyes = {
  sources: ['ophthalmology-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const chloramphenicol = drug({
  id: 'chloramphenicol',
  name: 'chloramphenicol',
  aliases: ['chloramphenicol eye ointment 1%'],
  class: 'amphenicol',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('40', '50', 'mg/kg'), ...aaha },
      interval: { value: { words: 'every 8 h', hours: ['8', '8'] }, ...aaha },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('250', 'mg'), divides: 'unknown' },
          { strength: quantity('500', 'mg'), divides: 'unknown' },
          { strength: quantity('1000', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'gloves: it can stop the marrow of people' },
          { words: 'weak hind legs in big dogs' },
          { words: 'slows the clearing of propofol and opioids' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['hepatic-disease', 'pregnant'] }, because: 'liver failure or pregnancy' },
        ],
        ...texts,
      },
      neverByHand: ['for an owner who cannot handle it safely', 'crushed'],
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('10', '20', 'mg/kg'), ...cat },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...cat },
      maxSingle: { value: { limit: quantity('50', 'mg'), words: 'a common cap per cat' }, ...cap },
      maxCumulative: { value: { per: 'course', days: 14, words: '14 days' }, ...cat },
      stocks: { value: [], ...products },
      tablets: {
        value: [{ strength: quantity('250', 'mg'), divides: 'unknown' }],
        ...products,
      },
      cautions: {
        value: [
          { words: 'gloves: it can stop the marrow of people' },
          { words: 'blood count early: the marrow suffers' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hepatic-disease', 'renal-disease'] },
            because: 'liver failure or kidney disease',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'dog',
      use: 'eye',
      routes: ['topical-eye'],
      range: { value: range('0.5', '1', 'cm/{eye}'), ...eyes },
      interval: { value: { words: 'every 6 to 8 h', hours: ['6', '8'] }, ...eyes },
      stocks: { value: [{ words: '1 % ointment' }], ...products },
      cautions: {
        value: [{ words: 'gloves: it can stop the marrow of people' }, { words: 'for a shallow ulcer' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'eye',
      routes: ['topical-eye'],
      range: { value: range('0.5', '1', 'cm/{eye}'), ...eyes },
      interval: { value: { words: 'every 6 to 8 h', hours: ['6', '8'] }, ...eyes },
      stocks: { value: [{ words: '1 % ointment' }], ...products },
      cautions: {
        value: [{ words: 'gloves: it can stop the marrow of people' }, { words: 'for a shallow ulcer' }],
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
