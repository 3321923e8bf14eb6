import type { Source } from '#core/evidence/sourced.ts'

export const osuPackedRedCells = {
  id: 'osu-packed-red-cells',
  citation: 'Ohio State University, Veterinary Medical Center: packed red blood cells',
  seenAt: 'excerpt of the page at vet.osu.edu',
  strength: 'handout',
} as const satisfies Source
