import { drug } from '#core/formulary/drug.ts'

const listed = {
  sources: ['mavacoxib-eu-spc'],
  where: 'long-acting; no other NSAID within a month of the last dose; remembered',
  known: 'remembered',
  strength: 'label',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const because = 'it is listed so that a recorded dose holds other NSAIDs and steroids back; no dose was looked for'

export const mavacoxib = drug({
  id: 'mavacoxib',
  name: 'mavacoxib',
  aliases: [],
  class: 'NSAID, for a month',
  groups: ['nsaid'],
  doses: [],
  none: [
    { species: 'dog', why: 'no-dose-found', because, ...listed },
    { species: 'cat', why: 'no-dose-found', because, ...listed },
  ],
})
