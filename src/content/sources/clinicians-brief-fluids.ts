import type { Source } from '#core/evidence/sourced.ts'

export const cliniciansBriefFluids = {
  id: 'clinicians-brief-fluids',
  citation: "Clinician's Brief, article on fluid therapy (blood volume of dog and cat)",
  seenAt: 'cliniciansbrief.com',
  strength: 'web',
} as const satisfies Source
