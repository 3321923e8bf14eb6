import type { Source } from '#core/evidence/sourced.ts'

export const cliniciansBriefBilateralAblation = {
  id: 'clinicians-brief-bilateral-ablation',
  citation: 'Unilateral vs bilateral total ear canal ablation: commentary on Coleman & Smeak 2016, Clinician’s Brief',
  seenAt: 'page of the journal',
  strength: 'web',
} as const satisfies Source
