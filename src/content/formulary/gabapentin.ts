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

const visitDog = {
  sources: ['gabapentin-dog-visit'],
  where: '20 to 25 mg/kg before a visit; 10 to 20 is remembered as common',
  known: 'read',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const visitCat = {
  sources: ['can-vet-j-2021-gabapentin'],
  where: 'trial of 50 and 100 mg per cat (means 16.3 and 35.3 mg/kg)',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const pain = {
  sources: ['aaha-2022-pain', 'wsava-2022-pain'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const gabapentin = drug({
  id: 'gabapentin',
  name: 'gabapentin',
  aliases: [],
  class: 'gabapentinoid',
  groups: ['gabapentinoid'],
  doses: [
    {
      species: 'dog',
      use: 'anxiolytic',
      routes: ['PO'],
      range: { value: range('10', '25', 'mg/kg'), ...visitDog, known: 'remembered' },
      interval: { value: { words: 'once, 1.5 to 2 h before the visit' }, ...visitDog },
      stocks: { value: [{ strength: quantity('50', 'mg/mL'), words: 'check for xylitol' }], ...products },
      tablets: {
        value: [
          { strength: quantity('100', 'mg'), divides: 'unknown' },
          { strength: quantity('300', 'mg'), divides: 'unknown' },
          { strength: quantity('400', 'mg'), divides: 'unknown' },
          { strength: quantity('600', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'sleepy and unsteady: hides recovery of balance' },
          { words: 'less with kidney disease', when: { kind: 'any-of', words: ['renal-disease'] } },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['a liquid with xylitol'],
    },
    {
      species: 'cat',
      use: 'anxiolytic',
      routes: ['PO'],
      range: { value: range('50', '100', 'mg/{animal}'), ...visitCat },
      interval: { value: { words: 'once, 1.5 to 2 h before the visit' }, ...visitCat },
      maxSingle: { value: { limit: quantity('100', 'mg'), words: 'per cat' }, ...visitCat },
      stocks: { value: [{ strength: quantity('50', 'mg/mL'), words: 'check for xylitol' }], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'sleepy and unsteady: hides recovery of balance' },
          { words: 'half the dose with kidney disease', when: { kind: 'any-of', words: ['renal-disease'] } },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'dog',
      use: 'analgesia_oral',
      routes: ['PO'],
      range: { value: range('5', '10', 'mg/kg'), ...pain },
      interval: { value: { words: 'every 8 to 12 h', hours: ['8', '12'] }, ...pain },
      maxCumulative: {
        value: { limit: quantity('30', 'mg/kg'), per: 'day', words: '30 mg/kg a day to begin with' },
        ...pain,
      },
      stocks: { value: [{ strength: quantity('50', 'mg/mL'), words: 'check for xylitol' }], ...products },
      tablets: {
        value: [
          { strength: quantity('100', 'mg'), divides: 'unknown' },
          { strength: quantity('300', 'mg'), divides: 'unknown' },
          { strength: quantity('400', 'mg'), divides: 'unknown' },
          { strength: quantity('600', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'sleepy and unsteady: hides recovery of balance' },
          { words: 'taper off' },
          { words: 'less with kidney disease', when: { kind: 'any-of', words: ['renal-disease'] } },
        ],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
      neverByHand: ['a liquid with xylitol'],
    },
    {
      species: 'cat',
      use: 'analgesia_oral',
      routes: ['PO'],
      range: { value: range('5', '10', 'mg/kg'), ...pain },
      interval: { value: { words: 'every 8 to 12 h', hours: ['8', '12'] }, ...pain },
      stocks: { value: [{ strength: quantity('50', 'mg/mL'), words: 'check for xylitol' }], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'unknown' },
          { strength: quantity('100', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'sleepy and unsteady: hides recovery of balance' },
          { words: 'half the dose with kidney disease', when: { kind: 'any-of', words: ['renal-disease'] } },
        ],
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
