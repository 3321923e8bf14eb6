import type { Source } from '#core/evidence/sourced.ts'

export const greci2014 = {
  id: 'greci-2014',
  citation:
    'Greci V, Vernia E, Mortellaro CM. Per-endoscopic trans-tympanic traction for the management of feline aural inflammatory polyps. J Feline Med Surg 2014;16. doi:10.1177/1098612X13516620',
  seenAt: 'abstract at discovery.researcher.life and a copy of PubMed 24366845',
  strength: 'study',
} as const satisfies Source
