import { drug, range } from '#core/formulary/drug.ts'

const products = {
  sources: ['usual-products'],
  known: 'common-practice',
  strength: 'practice',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

const texts = {
  sources: ['ophthalmology-texts'],
  where: 'label and ophthalmology texts',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'medium',
  checked: '2026-11-29',
} as const

export const ciclosporin = drug({
  id: 'ciclosporin',
  name: 'ciclosporin eye ointment',
  aliases: ['ciclosporin 0.2% ointment', 'cyclosporine'],
  class: 'lacrimomimetic',
  groups: [],
  doses: [
    {
      species: 'dog',
      use: 'eye',
      routes: ['topical-eye'],
      range: { value: range('0.5', '0.5', 'cm/{eye}'), ...texts },
      interval: { value: { words: 'every 12 h', hours: ['12', '12'] }, ...texts },
      stocks: { value: [{ words: '0.2 % ointment' }], ...products },
      cautions: {
        value: [
          {
            words:
              'for a dry eye of immune origin; one that lost its nerve usually needs pilocarpine: ask an eye specialist',
          },
          { words: 'gloves' },
        ],
        ...texts,
      },
      exclusions: { value: [], ...texts },
      neverByHand: ['with a viral or fungal disease of the cornea'],
    },
  ],
  none: [{ species: 'cat', why: 'no-dose-found', because: 'the formulary read has no row for cats', ...texts }],
})
