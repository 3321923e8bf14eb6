import { drug } from '#core/formulary/drug.ts'

const listed = {
  sources: ['medicine-texts'],
  where: 'an NSAID of dogs and cats; remembered',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const because = 'it is listed so that a recorded dose holds other NSAIDs and steroids back; no dose was looked for'

export const cimicoxib = drug({
  id: 'cimicoxib',
  name: 'cimicoxib',
  aliases: [],
  class: 'NSAID',
  groups: ['nsaid'],
  doses: [],
  none: [
    { species: 'dog', why: 'no-dose-found', because, ...listed },
    { species: 'cat', why: 'no-dose-found', because, ...listed },
  ],
})
