import type { Source } from '#core/evidence/sourced.ts'

export const wsava2022Pain = {
  id: 'wsava-2022-pain',
  citation: 'WSAVA guidelines for the recognition, assessment and treatment of pain, 2022',
  strength: 'guideline',
} as const satisfies Source
