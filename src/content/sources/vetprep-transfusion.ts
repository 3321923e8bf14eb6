import type { Source } from '#core/evidence/sourced.ts'

export const vetprepTransfusion = {
  id: 'vetprep-transfusion',
  citation: 'Blood transfusion calculations, a refresher for students',
  seenAt: 'blog.vetprep.com',
  strength: 'web',
} as const satisfies Source
