import type { Source } from '#core/evidence/sourced.ts'

export const papichClsiAminoglycosides = {
  id: 'papich-clsi-aminoglycosides',
  citation: 'Papich and CLSI-VET, gentamicin dosing in dogs and cats',
  strength: 'textbook',
} as const satisfies Source
