import type { Source } from '#core/evidence/sourced.ts'

export const staphylococcalBetaLactamBreakpoints = {
  id: 'staphylococcal-beta-lactam-breakpoints',
  citation: 'How well veterinary beta-lactam breakpoints find mecA in staphylococci (study of their performance)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
