import { drug, range } from '#core/formulary/drug.ts'

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

const low = {
  sources: ['anaesthesia-texts'],
  known: 'remembered',
  strength: 'textbook',
  confidence: 'low',
  checked: '2026-11-25',
} as const

export const remifentanil = drug({
  id: 'remifentanil',
  name: 'remifentanil',
  aliases: [],
  class: 'opioid, full mu agonist',
  groups: ['full-opioid'],
  doses: [
    {
      species: 'dog',
      use: 'cri',
      routes: ['IV'],
      range: { value: range('0.1', '0.4', 'ug/kg/min'), ...low },
      interval: { value: { words: 'continuous' }, ...low },
      stocks: { value: [{ words: '1 mg vial' }, { words: '2 mg vial' }, { words: '5 mg vial' }], ...products },
      cautions: {
        value: [{ words: 'nothing of it is left when it stops: start another opioid before' }, { words: 'ventilate' }],
        ...texts,
      },
      exclusions: {
        value: [],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'cri',
      routes: ['IV'],
      range: { value: range('0.1', '0.3', 'ug/kg/min'), ...low },
      interval: { value: { words: 'continuous' }, ...low },
      stocks: { value: [{ words: '1 mg vial' }, { words: '2 mg vial' }, { words: '5 mg vial' }], ...products },
      cautions: {
        value: [{ words: 'nothing of it is left when it stops: start another opioid before' }, { words: 'ventilate' }],
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
