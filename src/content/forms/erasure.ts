import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Orders that the body of one entry is erased. */
export const erasure = {
  kind: 'erasure',
  place: 'correction',
  chapters: [],
  writtenBy: ['manager'],
  amendable: false,
  sections: [{ id: 'order', fields: ['entry', 'because', 'orderedBy'] }],
  fields: { entry: { entries: [] }, because: { control: 'long-text' }, orderedBy: { register: 'person' } },
} as const satisfies FormArrangement
