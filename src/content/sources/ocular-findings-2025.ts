import type { Source } from '#core/evidence/sourced.ts'

export const ocularFindings2025 = {
  id: 'ocular-findings-2025',
  citation:
    'Prospective eye examinations around total ear canal ablation with lateral bulla osteotomy and ventral bulla osteotomy, two hospitals in Ohio. PubMed 39793190 (authors not shown on the page read)',
  seenAt: 'copy of the PubMed abstract 39793190',
  strength: 'study',
} as const satisfies Source
