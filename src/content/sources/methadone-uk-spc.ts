import type { Source } from '#core/evidence/sourced.ts'

export const methadoneUkSpc = {
  id: 'methadone-uk-spc',
  citation: 'UK summary of product characteristics, methadone 10 mg/mL injection',
  seenAt: 'public reprint',
  strength: 'label',
} as const satisfies Source
