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

const uk = {
  sources: ['uk-surgical-prophylaxis'],
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const papich = {
  sources: ['papich-dose-poster'],
  where: 'dog 12.5 to 25 mg/kg; cat 62.5 mg per cat',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
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

const noah = {
  sources: ['noah-amoxicillin-clavulanate-suspension'],
  where: '12.5 mg/kg, doubled in stubborn cases',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const tablets = {
  sources: ['amoxicillin-clavulanate-uk-spc-tablets'],
  where: '12.5 mg/kg twice a day; 50 mg tablets in halves, by a table that is never below the dose',
  known: 'read',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const amoxicillinClavulanate = drug({
  id: 'amoxicillin-clavulanate',
  name: 'amoxicillin with clavulanic acid',
  aliases: ['amoxicillin + clavulanic acid', 'co-amoxiclav', 'amoxicillin/clavulanic acid'],
  class: 'aminopenicillin with inhibitor',
  groups: ['aminopenicillin'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_periop',
      routes: ['IV'],
      range: { value: range('20', '20', 'mg/kg'), ...uk },
      interval: { value: { words: 'every 90 to 120 min during surgery', hours: ['1.5', '2'] }, ...uk },
      maxSingle: { value: { limit: quantity('1200', 'mg'), words: 'per dose' }, ...uk },
      stocks: { value: [{ strength: quantity('60', 'mg/mL'), words: 'human powder, reconstituted' }], ...products },
      cautions: {
        value: [{ words: 'the dose is the sum of both actives' }],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['penicillin-anaphylaxis'] }, because: 'anaphylaxis to a penicillin' },
        ],
        ...texts,
      },
      neverByHand: ['the veterinary suspension for injection under the skin into a vein'],
    },
    {
      species: 'cat',
      use: 'antibiotic_periop',
      routes: ['IV'],
      range: { value: range('20', '20', 'mg/kg'), ...uk },
      interval: { value: { words: 'every 90 to 120 min during surgery', hours: ['1.5', '2'] }, ...uk },
      stocks: { value: [{ strength: quantity('60', 'mg/mL'), words: 'human powder, reconstituted' }], ...products },
      cautions: {
        value: [{ words: 'the dose is the sum of both actives' }],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['penicillin-anaphylaxis'] }, because: 'anaphylaxis to a penicillin' },
        ],
        ...texts,
      },
      neverByHand: ['the veterinary suspension for injection under the skin into a vein'],
    },
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('12.5', '25', 'mg/kg'), ...papich },
      otherRanges: [
        { value: { ...range('14', '25', 'mg/kg'), words: 'guideline table' }, ...aaha },
        { value: { ...range('12.5', '25', 'mg/kg'), words: 'label, doubled in stubborn cases' }, ...noah },
      ],
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...papich },
      stocks: {
        value: [
          { strength: quantity('50', 'mg/mL'), words: 'suspension' },
          { strength: quantity('62.5', 'mg/mL'), words: 'veterinary suspension in some markets' },
        ],
        ...products,
      },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'halves', rounds: 'up' },
          { strength: quantity('62.5', 'mg'), divides: 'unknown' },
          { strength: quantity('125', 'mg'), divides: 'unknown' },
          { strength: quantity('250', 'mg'), divides: 'unknown' },
          { strength: quantity('375', 'mg'), divides: 'unknown' },
          { strength: quantity('500', 'mg'), divides: 'unknown' },
        ],
        ...tablets,
      },
      cautions: {
        value: [
          { words: 'the dose is the sum of both actives; so is the tablet strength' },
          { words: 'human tablets have another ratio' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['penicillin-anaphylaxis'] }, because: 'anaphylaxis to a penicillin' },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('12.5', '25', 'mg/kg'), ...noah },
      otherRanges: [
        { value: { ...range('62.5', '62.5', 'mg/{animal}'), words: 'flat dose per cat' }, ...papich },
        { value: { ...range('12.5', '12.5', 'mg/kg'), words: 'UK label, twice a day' }, ...tablets },
      ],
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...noah },
      stocks: { value: [{ strength: quantity('50', 'mg/mL'), words: 'suspension' }], ...products },
      tablets: {
        value: [
          { strength: quantity('50', 'mg'), divides: 'halves', rounds: 'up' },
          { strength: quantity('62.5', 'mg'), divides: 'unknown' },
        ],
        ...tablets,
      },
      cautions: {
        value: [{ words: 'the dose is the sum of both actives; so is the tablet strength' }],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['penicillin-anaphylaxis'] }, because: 'anaphylaxis to a penicillin' },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
