import type { Source } from '#core/evidence/sourced.ts'

export const aaha2024Fluids = {
  id: 'aaha-2024-fluids',
  citation: '2024 AAHA fluid therapy guidelines for dogs and cats',
  strength: 'guideline',
} as const satisfies Source
