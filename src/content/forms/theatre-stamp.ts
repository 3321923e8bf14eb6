import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One tap at a checkpoint of the operation. */
export const theatreStamp = {
  kind: 'theatre-stamp',
  place: 'case',
  chapters: ['Theatre'],
  writtenBy: ['nurse', 'surgeon'],
  amendable: true,
  sections: [{ id: 'stamp', fields: ['checkpoint', 'answer', 'detail', 'text'] }],
  fields: { checkpoint: { register: 'checkpoint', empties: 'detail' } },
} as const satisfies FormArrangement
