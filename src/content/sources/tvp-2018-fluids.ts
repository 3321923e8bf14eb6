import type { Source } from '#core/evidence/sourced.ts'

export const tvp2018Fluids = {
  id: 'tvp-2018-fluids',
  citation: "Today's Veterinary Practice, January/February 2018, page 73: fluid therapy",
  seenAt: 'todaysveterinarypractice.epubxp.com',
  strength: 'web',
} as const satisfies Source
