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

const dryEye = {
  sources: ['jaaha-1995-dry-eye'],
  where: '5 of 33 dogs (15 %) became dry-eyed; the Dobermann rule is remembered',
  known: 'read',
  strength: 'study',
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

export const trimethoprimSulfonamide = drug({
  id: 'trimethoprim-sulfonamide',
  name: 'trimethoprim with a sulfonamide',
  aliases: ['trimethoprim + sulfadiazine', 'trimethoprim-sulfadiazine', 'trimethoprim-sulfamethoxazole', 'TMS'],
  class: 'potentiated sulfonamide',
  groups: ['sulfonamide'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('15', '30', 'mg/kg'), ...aaha },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...aaha },
      maxCumulative: { value: { per: 'course', days: 14, words: '14 days preferred' }, ...aaha },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('30', 'mg'), divides: 'unknown' },
          { strength: quantity('120', 'mg'), divides: 'unknown' },
          { strength: quantity('480', 'mg'), divides: 'unknown' },
          { strength: quantity('960', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'the dose is the sum of both actives' },
          { words: 'dries the eye: tear test before and every week, twice the hazard without a blink' },
          { words: 'changes thyroid tests' },
        ],
        ...dryEye,
      },
      exclusions: {
        value: [
          { when: { kind: 'any-of', words: ['dobermann'] }, because: 'Dobermanns react badly' },
          { when: { kind: 'any-of', words: ['dry-eye'] }, because: 'a dry eye already' },
          {
            when: { kind: 'any-of', words: ['hepatic-disease', 'sulfonamide-reaction'] },
            because: 'liver failure, or an earlier reaction',
          },
        ],
        ...dryEye,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('15', '15', 'mg/kg'), ...medicine },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...medicine },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('30', 'mg'), divides: 'unknown' },
          { strength: quantity('120', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [{ words: 'the dose is the sum of both actives' }, { words: 'drooling; keep drinking' }],
        ...texts,
      },
      exclusions: {
        value: [
          {
            when: { kind: 'any-of', words: ['hepatic-disease', 'renal-disease', 'sulfonamide-reaction'] },
            because: 'liver or kidney failure, or an earlier reaction',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
