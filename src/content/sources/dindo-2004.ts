import type { Source } from '#core/evidence/sourced.ts'

export const dindo2004 = {
  id: 'dindo-2004',
  citation:
    'Dindo D, Demartines N, Clavien PA. Classification of surgical complications. Ann Surg 2004;240(2):205–213 (people)',
  seenAt: 'the table of grades, as later papers on people print it',
  strength: 'guideline',
} as const satisfies Source
