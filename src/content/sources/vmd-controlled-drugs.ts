import type { Source } from '#core/evidence/sourced.ts'

export const vmdControlledDrugs = {
  id: 'vmd-controlled-drugs',
  citation: 'Veterinary Medicines Directorate (UK), guidance on controlled drugs',
  seenAt: 'vmd.defra.gov.uk',
  strength: 'guideline',
} as const satisfies Source
