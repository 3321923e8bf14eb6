import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Swabs, needles and instruments counted. */
export const count = {
  kind: 'count',
  place: 'case',
  chapters: ['Theatre'],
  writtenBy: ['nurse'],
  amendable: true,
  sections: [{ id: 'count', fields: ['when', 'items', 'throatPack'] }],
} as const satisfies FormArrangement
