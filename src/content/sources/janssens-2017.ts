import type { Source } from '#core/evidence/sourced.ts'

export const janssens2017 = {
  id: 'janssens-2017',
  citation:
    'Janssens SDS, Haagsman AN, ter Haar G. Middle ear polyps: results of traction avulsion after a lateral approach to the ear canal in 62 cats (2004–2014). J Feline Med Surg 2017;19(8):803–808. doi:10.1177/1098612X16660356',
  seenAt: 'abstract at mendeley.com and bvbvf1.bib-bvb.de',
  strength: 'study',
} as const satisfies Source
