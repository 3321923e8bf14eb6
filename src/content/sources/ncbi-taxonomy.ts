import type { Source } from '#core/evidence/sourced.ts'

export const ncbiTaxonomy = {
  id: 'ncbi-taxonomy',
  citation: 'NCBI Taxonomy, National Library of Medicine (public domain)',
  seenAt: 'an HL7 page that names its URI; the two numbers are remembered',
  strength: 'guideline',
} as const satisfies Source
