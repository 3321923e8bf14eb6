import { drug } from '#core/formulary/drug.ts'

const washout = {
  sources: ['aaha-aafp-2015-pain'],
  where: 'a depot steroid needs longer than 7 days before an NSAID; how long is not said',
  known: 'read',
  strength: 'guideline',
  confidence: 'medium',
  checked: '2026-11-25',
} as const

export const methylprednisoloneAcetate = drug({
  id: 'methylprednisolone-acetate',
  name: 'methylprednisolone acetate',
  aliases: ['depot methylprednisolone'],
  class: 'corticosteroid, depot',
  groups: ['depot-steroid', 'steroid'],
  doses: [],
  none: [
    {
      species: 'dog',
      why: 'no-dose-found',
      because: 'it is listed so that a recorded injection is seen beside an NSAID; no dose was looked for',
      ...washout,
    },
    {
      species: 'cat',
      why: 'no-dose-found',
      because: 'it is listed so that a recorded injection is seen beside an NSAID; no dose was looked for',
      ...washout,
    },
  ],
})
