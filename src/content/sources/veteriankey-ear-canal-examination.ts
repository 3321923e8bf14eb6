import type { Source } from '#core/evidence/sourced.ts'

export const veteriankeyEarCanalExamination = {
  id: 'veteriankey-ear-canal-examination',
  citation: "'Examination of the external ear canal', chapter of a dermatology text, as a web copy",
  seenAt: 'opening of the page',
  strength: 'textbook',
} as const satisfies Source
