import type { Source } from '#core/evidence/sourced.ts'

export const spivack2013 = {
  id: 'spivack-2013',
  citation:
    'Spivack RE et al. Postoperative complications following TECA-LBO in the dog and cat. J Am Anim Hosp Assoc 2013;49(3):160–168. doi:10.5326/jaaha-ms-5738',
  seenAt:
    'opening of the abstract at scite.ai (121 ears of 82 dogs, 12 ears of 11 cats, 2004–2010); the counts were cut off there',
  strength: 'study',
} as const satisfies Source
