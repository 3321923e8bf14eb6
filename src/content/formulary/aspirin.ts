import { drug } from '#core/formulary/drug.ts'

const washout = {
  sources: ['aaha-aafp-2015-pain'],
  where: 'named only for its washout of up to 10 days',
  known: 'read',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const aspirin = drug({
  id: 'aspirin',
  name: 'aspirin',
  aliases: ['acetylsalicylic acid'],
  class: 'NSAID',
  groups: ['nsaid'],
  doses: [],
  none: [
    {
      species: 'dog',
      why: 'no-dose-found',
      because: 'it is listed so that a recorded dose blocks other NSAIDs and steroids; no dose was looked for',
      ...washout,
    },
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'it is listed so that a recorded dose blocks other NSAIDs and steroids; no dose was looked for',
      ...washout,
    },
  ],
})
