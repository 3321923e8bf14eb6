import type { Source } from '#core/evidence/sourced.ts'

export const reed2014 = {
  id: 'reed-2014',
  citation: 'Reed et al., J Feline Med Surg 2014;16:651 (packed cell volume after transfusion in cats)',
  seenAt: 'abstract',
  strength: 'study',
} as const satisfies Source
