import { drug } from '#core/formulary/drug.ts'

const universal = {
  sources: ['medicine-texts'],
  where: 'every text says so',
  known: 'remembered',
  strength: 'textbook',
  confidence: 'high',
  checked: '2026-11-29',
} as const

export const permethrin = drug({
  id: 'permethrin',
  name: 'permethrin',
  aliases: [],
  class: 'pyrethroid',
  groups: [],
  doses: [],
  none: [
    {
      species: 'cat',
      why: 'never',
      because: 'cats cannot clear it: tremor, fits and death; a spot-on for dogs kills them',
      ...universal,
    },
    {
      species: 'dog',
      why: 'no-dose-found',
      because: 'it is listed because it kills cats; no dose for the dog was looked for',
      ...universal,
    },
  ],
})
