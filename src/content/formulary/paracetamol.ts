import { drug, range } from '#core/formulary/drug.ts'
import { quantity } from '#core/units/quantity.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const wsava = {
  sources: ['wsava-2022-pain'],
  where: 'a UK licensed mixture with codeine gives 33 mg/kg every 8 h for 5 days',
  known: 'remembered',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const universal = {
  sources: ['medicine-texts'],
  where: 'every text says so',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const paracetamol = drug({
  id: 'paracetamol',
  name: 'paracetamol',
  aliases: ['acetaminophen'],
  class: 'non-opioid analgesic',
  groups: ['non-opioid-analgesic'],
  doses: [
    {
      species: 'dog',
      use: 'analgesia_oral',
      routes: ['PO', 'IV'],
      range: { value: range('10', '15', 'mg/kg'), ...wsava },
      otherRanges: [
        {
          value: { ...range('33', '33', 'mg/kg'), words: 'UK licensed mixture with codeine, every 8 h for 5 days' },
          ...wsava,
        },
      ],
      interval: { value: { words: 'every 8 to 12 h', hours: ['8', '12'] }, ...wsava },
      maxCumulative: { value: { limit: quantity('45', 'mg/kg'), per: 'day', words: '45 mg/kg a day' }, ...wsava },
      stocks: {
        value: [
          { strength: quantity('10', 'mg/mL'), words: 'into a vein' },
          { strength: quantity('24', 'mg/mL'), words: 'by mouth' },
        ],
        ...products,
      },
      tablets: {
        value: [{ strength: quantity('500', 'mg'), divides: 'unknown' }],
        ...products,
      },
      cautions: {
        value: [{ words: 'a way out where NSAID and steroid exclude each other' }],
        ...wsava,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['hepatic-disease'] }, because: 'liver disease' }],
        ...wsava,
      },
    },
  ],
  none: [
    {
      species: 'cat',
      why: 'never',
      because: 'cats cannot clear it: methaemoglobin, then death',
      ...universal,
    },
  ],
})
