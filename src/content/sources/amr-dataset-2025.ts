import type { Source } from '#core/evidence/sourced.ts'

export const amrDataset2025 = {
  id: 'amr-dataset-2025',
  citation:
    'AMR, a package for R, version 3.0.0 (June 2025): its tables of clinical breakpoints, doses, intrinsic resistance, organisms and drugs, which restate the CLSI and EUCAST documents',
  seenAt: 'the tables of the package; the CLSI and EUCAST documents themselves were not read',
  strength: 'web',
} as const satisfies Source
