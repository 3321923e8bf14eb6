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

const macDog = {
  sources: ['kazama-ikeda-1988'],
  where: 'MAC 2.36; the setting range is remembered',
  known: 'remembered',
  strength: 'study',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

const macCat = {
  sources: ['shaughnessy-hofmeister-2014'],
  where: 'review mean 3.08 (2.50 to 3.95); the setting range is remembered',
  known: 'remembered',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const sevoflurane = drug({
  id: 'sevoflurane',
  name: 'sevoflurane',
  aliases: [],
  class: 'inhalant',
  groups: ['inhalant'],
  doses: [
    {
      species: 'dog',
      use: 'maintenance',
      routes: ['INH'],
      range: { value: range('2', '4', '%{vol}'), ...macDog },
      interval: { value: { words: 'continuous, to effect' }, ...macDog },
      maxSingle: { value: { limit: quantity('8', '%{vol}'), words: 'vaporiser' }, ...macDog },
      stocks: { value: [{ words: 'liquid for the vaporiser' }], ...products },
      cautions: {
        value: [
          { words: 'MAC about 2.1 to 2.4' },
          { words: 'pressure falls with depth: add pain relief instead' },
          { words: 'scavenge' },
        ],
        ...macDog,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['malignant-hyperthermia'] }, because: 'malignant hyperthermia' }],
        ...texts,
      },
    },
    {
      species: 'cat',
      use: 'maintenance',
      routes: ['INH'],
      range: { value: range('2', '4.5', '%{vol}'), ...macCat },
      interval: { value: { words: 'continuous, to effect' }, ...macCat },
      maxSingle: { value: { limit: quantity('8', '%{vol}'), words: 'vaporiser' }, ...macCat },
      stocks: { value: [{ words: 'liquid for the vaporiser' }], ...products },
      cautions: {
        value: [
          { words: 'MAC: review mean 3.08 (2.50 to 3.95); older texts give 2.6' },
          { words: 'pressure falls with depth: add pain relief instead' },
          { words: 'scavenge' },
        ],
        ...macCat,
      },
      exclusions: {
        value: [{ when: { kind: 'any-of', words: ['malignant-hyperthermia'] }, because: 'malignant hyperthermia' }],
        ...texts,
      },
    },
  ],
  none: [],
})
