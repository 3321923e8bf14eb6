import { emergencyBleeding } from '#content/protocols/emergency-bleeding.ts'
import { asOnSheet } from '#core/formulary/as-on-sheet.ts'
import { drug } from '#core/formulary/drug.ts'
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

const dogs = {
  sources: ['kelmer-2015', 'tranexamic-acid-dogs-cats-2018-2019'],
  where: '10 mg/kg slowly; vomiting at 15 to 20 mg/kg given fast',
  known: 'read',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const cats = {
  sources: ['tranexamic-acid-28-cats'],
  where: 'median 10 mg/kg',
  known: 'read',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const tranexamicAcid = drug({
  id: 'tranexamic-acid',
  name: 'tranexamic acid',
  aliases: [],
  class: 'antifibrinolytic',
  groups: ['antifibrinolytic'],
  doses: [
    {
      species: 'dog',
      use: 'antifibrinolytic',
      routes: ['IV'],
      range: asOnSheet(emergencyBleeding, 'tranexamic-acid', 'dog').range,
      interval: { value: { words: 'slowly over 10 to 20 min, then 10 mg/kg/h for 3 h or every 8 h' }, ...dogs },
      stocks: { value: [{ strength: quantity('100', 'mg/mL') }, { strength: quantity('50', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'given fast it makes dogs vomit' },
          { words: 'seizures when much of it adds up' },
          { words: 'relative: a clot elsewhere', when: { kind: 'any-of', words: ['thromboembolism'] } },
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
      use: 'antifibrinolytic',
      routes: ['IV'],
      range: asOnSheet(emergencyBleeding, 'tranexamic-acid', 'cat').range,
      interval: { value: { words: 'slowly, every 8 h' }, ...cats },
      stocks: { value: [{ strength: quantity('100', 'mg/mL') }, { strength: quantity('50', 'mg/mL') }], ...products },
      cautions: {
        value: [
          { words: 'drooling; one cat survived a tenfold dose' },
          { words: 'relative: a clot elsewhere', when: { kind: 'any-of', words: ['thromboembolism'] } },
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
