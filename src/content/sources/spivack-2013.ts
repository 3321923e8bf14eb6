import type { Source } from '#core/evidence/sourced.ts'

export const spivack2013 = {
  id: 'spivack-2013',
  citation: 'Spivack RE et al. J Am Anim Hosp Assoc 2013;49(3):160–168. doi:10.5326/jaaha-ms-5738',
  seenAt: 'header of the abstract at scite.ai (133 ears: 121 of dogs, 12 of cats); the counts were cut off there',
  strength: 'study',
} as const satisfies Source
