import type { Source } from '#core/evidence/sourced.ts'

export const technicianDrugCalculations = {
  id: 'technician-drug-calculations',
  citation: 'Article on drug calculations for veterinary technicians',
  seenAt: 'learnvetdentistry.com',
  strength: 'web',
} as const satisfies Source
