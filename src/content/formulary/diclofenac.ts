import { drug } from '#core/formulary/drug.ts'

const listed = {
  sources: ['medicine-texts'],
  where: 'an NSAID; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-30',
} as const

const because = 'it is listed so that other NSAIDs and steroids are held back beside it; no dose was looked for'

export const diclofenac = drug({
  id: 'diclofenac',
  name: 'diclofenac',
  aliases: [],
  class: 'NSAID',
  groups: ['nsaid'],
  doses: [],
  none: [
    { species: 'dog', why: 'no-dose-found', because, ...listed },
    { species: 'cat', why: 'no-dose-found', because, ...listed },
  ],
})
