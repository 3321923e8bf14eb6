import type { Source } from '#core/evidence/sourced.ts'

export const recover2024 = {
  id: 'recover-2024',
  citation: 'RECOVER guidelines for cardiopulmonary resuscitation of dogs and cats, 2024 (full text not opened)',
  strength: 'guideline',
} as const satisfies Source
