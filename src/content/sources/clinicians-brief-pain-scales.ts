import type { Source } from '#core/evidence/sourced.ts'

export const cliniciansBriefPainScales = {
  id: 'clinicians-brief-pain-scales',
  citation: 'Canine and feline pain scales, Clinician’s Brief; names AAHA for the assessment of pain',
  seenAt: 'cliniciansbrief.com/article/canine-feline-pain-scales, an excerpt',
  strength: 'web',
} as const satisfies Source
