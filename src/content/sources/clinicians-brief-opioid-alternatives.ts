import type { Source } from '#core/evidence/sourced.ts'

export const cliniciansBriefOpioidAlternatives = {
  id: 'clinicians-brief-opioid-alternatives',
  citation: "Clinician's Brief, article on alternatives to opioids",
  seenAt: 'cliniciansbrief.com',
  strength: 'web',
} as const satisfies Source
