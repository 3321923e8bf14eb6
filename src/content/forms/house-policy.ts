import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A default that this clinic changed. */
export const housePolicy = {
  kind: 'house-policy',
  place: 'clinic',
  chapters: [],
  writtenBy: ['manager', 'surgeon'],
  amendable: true,
  sections: [{ id: 'policy', fields: ['policy', 'value', 'because'] }],
} as const satisfies FormArrangement
