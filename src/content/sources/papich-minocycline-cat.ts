import type { Source } from '#core/evidence/sourced.ts'

export const papichMinocyclineCat = {
  id: 'papich-minocycline-cat',
  citation: 'Papich, pharmacokinetics of minocycline in cats',
  strength: 'study',
} as const satisfies Source
