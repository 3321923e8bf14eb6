import type { Source } from '#core/evidence/sourced.ts'

export const bloodLossFlashcards = {
  id: 'blood-loss-flashcards',
  citation: 'Teaching flashcards on surgical blood loss (low quality)',
  seenAt: 'newleadershiporegon page',
  strength: 'handout',
} as const satisfies Source
