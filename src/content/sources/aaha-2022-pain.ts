import type { Source } from '#core/evidence/sourced.ts'

export const aaha2022Pain = {
  id: 'aaha-2022-pain',
  citation: '2022 AAHA pain management guidelines for dogs and cats',
  strength: 'guideline',
} as const satisfies Source
