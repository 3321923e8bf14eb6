import type { Source } from '#core/evidence/sourced.ts'

export const tranexamicAcid28Cats = {
  id: 'tranexamic-acid-28-cats',
  citation: 'Retrospective study of tranexamic acid in 28 cats (median 10 mg/kg), J Vet Emerg Crit Care',
  seenAt: 'summary at vetlit.org',
  strength: 'study',
} as const satisfies Source
