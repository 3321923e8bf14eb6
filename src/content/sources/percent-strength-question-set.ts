import type { Source } from '#core/evidence/sourced.ts'

export const percentStrengthQuestionSet = {
  id: 'percent-strength-question-set',
  citation: 'Veterinary technician pharmacology question set with answers',
  seenAt: 'quizwizapp.com, vet 292',
  strength: 'handout',
} as const satisfies Source
