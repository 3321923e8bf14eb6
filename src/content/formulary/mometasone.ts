import { drug } from '#core/formulary/drug.ts'

const listed = {
  sources: ['dermatology-texts'],
  where: 'a corticosteroid of ear and skin products; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const because = 'it is listed so that a recorded dose holds an NSAID back; no dose was looked for'

export const mometasone = drug({
  id: 'mometasone',
  name: 'mometasone',
  aliases: ['mometasone furoate'],
  class: 'corticosteroid',
  groups: ['steroid'],
  doses: [],
  none: [
    { species: 'dog', why: 'no-dose-found', because, ...listed },
    { species: 'cat', why: 'no-dose-found', because, ...listed },
  ],
})
