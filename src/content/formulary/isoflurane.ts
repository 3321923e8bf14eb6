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
  sources: ['steffey-howland-1977', 'barletta-2016'],
  where: 'MAC 1.28, and 1.23 to 1.27; the setting range is remembered',
  known: 'remembered',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

const macCat = {
  sources: ['steffey-howland-1977', 'shaughnessy-hofmeister-2014'],
  where: 'MAC 1.63, review mean 1.71 (1.20 to 2.22); the setting range is remembered',
  known: 'remembered',
  strength: 'study',
  confidence: 'high',
  checked: '2026-11-25',
} as const

export const isoflurane = drug({
  id: 'isoflurane',
  name: 'isoflurane',
  aliases: [],
  class: 'inhalant',
  groups: ['inhalant'],
  doses: [
    {
      species: 'dog',
      use: 'maintenance',
      routes: ['INH'],
      range: { value: range('1', '2.5', '%{vol}'), ...macDog },
      interval: { value: { words: 'continuous, to effect' }, ...macDog },
      maxSingle: { value: { limit: quantity('5', '%{vol}'), words: 'vaporiser' }, ...macDog },
      stocks: { value: [{ words: 'liquid for the vaporiser' }], ...products },
      cautions: {
        value: [
          { words: 'MAC about 1.28 (1.23 to 1.28 in the studies read)' },
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
      range: { value: range('1', '2.5', '%{vol}'), ...macCat },
      interval: { value: { words: 'continuous, to effect' }, ...macCat },
      maxSingle: { value: { limit: quantity('5', '%{vol}'), words: 'vaporiser' }, ...macCat },
      stocks: { value: [{ words: 'liquid for the vaporiser' }], ...products },
      cautions: {
        value: [
          { words: 'MAC 1.63; review mean 1.71 (1.20 to 2.22)' },
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
