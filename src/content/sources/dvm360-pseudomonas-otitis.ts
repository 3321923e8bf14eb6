import type { Source } from '#core/evidence/sourced.ts'

export const dvm360PseudomonasOtitis = {
  id: 'dvm360-pseudomonas-otitis',
  citation: 'Veterinary Medicine (dvm360): managing Pseudomonas otitis',
  strength: 'web',
} as const satisfies Source
