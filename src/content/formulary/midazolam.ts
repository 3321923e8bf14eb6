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

const handout = {
  sources: ['sa-anesthesia-drug-dosages-2022'],
  where: '0.1 to 0.2 mg/kg',
  known: 'read',
  strength: 'handout',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const vetTimes = {
  sources: ['vet-times-sedation-overview'],
  where: 'combination table',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const bsava = {
  sources: ['bsava-table-6-23'],
  where: 'with methadone',
  known: 'read',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const joined = {
  sources: ['sa-anesthesia-drug-dosages-2022', 'vet-times-sedation-overview'],
  where: 'low end from the hand-out, high end from the combination table',
  known: 'read',
  strength: 'web',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const midazolam = drug({
  id: 'midazolam',
  name: 'midazolam',
  aliases: [],
  class: 'benzodiazepine',
  groups: ['benzodiazepine'],
  doses: [
    {
      species: 'dog',
      use: 'premed',
      routes: ['IM', 'IV'],
      range: { value: range('0.1', '0.4', 'mg/kg'), ...joined },
      otherRanges: [
        { value: { ...range('0.1', '0.2', 'mg/kg'), words: 'hand-out' }, ...handout },
        { value: { ...range('0.3', '0.4', 'mg/kg'), words: 'combinations' }, ...vetTimes },
        { value: { ...range('0.3', '0.4', 'mg/kg'), words: 'with methadone' }, ...bsava },
      ],
      interval: { value: { words: 'once' }, ...joined },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }, { strength: quantity('1', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'alone it may excite a fit young dog: pair it with an opioid' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'premed',
      routes: ['IM', 'IV'],
      range: { value: range('0.1', '0.3', 'mg/kg'), ...joined },
      otherRanges: [
        { value: { ...range('0.1', '0.2', 'mg/kg'), words: 'hand-out' }, ...handout },
        { value: { ...range('0.2', '0.3', 'mg/kg'), words: 'with ketamine' }, ...vetTimes },
      ],
      interval: { value: { words: 'once' }, ...joined },
      stocks: { value: [{ strength: quantity('5', 'mg/mL') }, { strength: quantity('1', 'mg/mL') }], ...products },
      cautions: {
        value: [{ words: 'alone it may excite a healthy cat: pair it with ketamine or an opioid' }],
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
