import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What something has cost during the stay. */
export const costSoFar = {
  kind: 'cost-so-far',
  place: 'case',
  chapters: ['Agreement', 'Ward'],
  writtenBy: ['desk', 'nurse', 'surgeon'],
  amendable: true,
  sections: [{ id: 'cost', fields: ['part', 'what', 'amount', 'finished', 'by'] }],
  fields: { part: { control: 'select' }, by: { register: 'person' } },
} as const satisfies FormArrangement
