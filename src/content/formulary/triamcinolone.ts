import { drug } from '#core/formulary/drug.ts'

const listed = {
  sources: ['dermatology-texts', 'aaha-aafp-2015-pain'],
  where: 'a long-acting steroid by injection, also in ear products; remembered. How long it lasts is not said',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const because = 'it is listed so that a recorded dose holds an NSAID back; no dose was looked for'

export const triamcinolone = drug({
  id: 'triamcinolone',
  name: 'triamcinolone',
  aliases: ['triamcinolone acetonide'],
  class: 'corticosteroid, depot by injection',
  groups: ['depot-steroid', 'steroid'],
  doses: [],
  none: [
    { species: 'dog', why: 'no-dose-found', because, ...listed },
    { species: 'cat', why: 'no-dose-found', because, ...listed },
  ],
})
