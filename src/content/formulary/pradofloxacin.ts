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
  sources: ['aaha-2023-allergic-skin', 'small-animal-internal-medicine-6'],
  where: '3 in the first, 5 in the second',
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const cat = {
  sources: ['small-animal-internal-medicine-6', 'pradofloxacin-eu-spc'],
  where: '7.5 (suspension) was read; 3 (tablets) is remembered',
  known: 'read',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const pradofloxacin = drug({
  id: 'pradofloxacin',
  name: 'pradofloxacin',
  aliases: [],
  class: 'fluoroquinolone',
  groups: ['fluoroquinolone'],
  doses: [
    {
      species: 'dog',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('3', '5', 'mg/kg'), ...aaha },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...aaha },
      stocks: { value: [], ...products },
      tablets: {
        value: [
          { strength: quantity('15', 'mg'), divides: 'unknown' },
          { strength: quantity('60', 'mg'), divides: 'unknown' },
          { strength: quantity('120', 'mg'), divides: 'unknown' },
        ],
        ...products,
      },
      cautions: {
        value: [
          { words: 'keep for what a culture asks for' },
          { words: '2 h apart from aluminium, calcium, magnesium or iron by mouth' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
          { words: 'not licensed for dogs in the US; harms the marrow at high doses' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'younger-than', months: 12 }, because: 'under 12 months: growing cartilage' },
          {
            when: { kind: 'younger-than', months: 18, only: 'giant-breed' },
            because: 'giant breeds under 18 months: growing cartilage',
          },
          {
            when: { kind: 'any-of', words: ['quinolone-resistance', 'quinolone-hypersensitivity'] },
            because: 'known resistance or hypersensitivity to quinolones',
          },
        ],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'antibiotic_course',
      routes: ['PO'],
      range: { value: range('3', '7.5', 'mg/kg'), ...cat, known: 'remembered' },
      interval: { value: { words: 'every 24 h', hours: ['24', '24'] }, ...cat },
      maxCumulative: { value: { per: 'course', days: 7, words: '7 days (US label)' }, ...cat },
      stocks: { value: [{ strength: quantity('25', 'mg/mL'), words: 'suspension' }], ...products },
      tablets: {
        value: [{ strength: quantity('15', 'mg'), divides: 'unknown' }],
        ...products,
      },
      cautions: {
        value: [
          { words: 'keep for what a culture asks for' },
          { words: '2 h apart from aluminium, calcium, magnesium or iron by mouth' },
          { words: 'lowers the seizure threshold', when: { kind: 'any-of', words: ['seizure-disorder'] } },
          { words: 'suspension 5 to 7.5, tablets 3 mg/kg' },
          { words: 'kinder to the retina than enrofloxacin' },
        ],
        ...texts,
      },
      exclusions: {
        value: [
          { when: { kind: 'younger-than', months: 3 }, because: 'under 12 weeks' },
          {
            when: { kind: 'any-of', words: ['quinolone-resistance', 'quinolone-hypersensitivity'] },
            because: 'known resistance or hypersensitivity to quinolones',
          },
        ],
        ...texts,
      },
    },
  ],
  none: [],
})
