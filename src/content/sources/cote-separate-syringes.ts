import type { Source } from '#core/evidence/sourced.ts'

export const coteSeparateSyringes = {
  id: 'cote-separate-syringes',
  citation: 'Côté: page on drugs that need a syringe of their own (work not named)',
  seenAt: 'the page itself, noted without its title',
  strength: 'textbook',
} as const satisfies Source
