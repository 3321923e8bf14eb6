import type { Source } from '#core/evidence/sourced.ts'

export const whoMia2024 = {
  id: 'who-mia-2024',
  citation: 'World Health Organization, list of medically important antimicrobials, 2024',
  strength: 'guideline',
} as const satisfies Source
