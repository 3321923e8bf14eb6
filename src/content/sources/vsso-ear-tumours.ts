import type { Source } from '#core/evidence/sourced.ts'

export const vssoEarTumours = {
  id: 'vsso-ear-tumours',
  citation: 'Veterinary Society of Surgical Oncology, ear canal tumours',
  seenAt: 'vsso.org',
  strength: 'web',
} as const satisfies Source
