import type { Source } from '#core/evidence/sourced.ts'

export const bestvetaustinMedicalMaths = {
  id: 'bestvetaustin-medical-maths',
  citation: 'Worked answers in medical mathematics for veterinary staff',
  seenAt: 'bestvetaustin.com',
  strength: 'web',
} as const satisfies Source
