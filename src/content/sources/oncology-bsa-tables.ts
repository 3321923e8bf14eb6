import type { Source } from '#core/evidence/sourced.ts'

export const oncologyBsaTables = {
  id: 'oncology-bsa-tables',
  citation: 'Widely printed weight to body-surface tables of oncology texts (no single text named)',
  strength: 'textbook',
} as const satisfies Source
