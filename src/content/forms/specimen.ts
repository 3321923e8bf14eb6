import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What was taken, from where, on which antibiotics. */
export const specimen = {
  kind: 'specimen',
  place: 'case',
  chapters: ['Work-up', 'Theatre', 'Year'],
  writtenBy: ['nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'sample', fields: ['site', 'tests', 'label', 'antibioticsOnBoard'] },
    { id: 'way', fields: ['laboratory', 'expectedBy', 'operation'] },
  ],
  fields: {
    laboratory: { register: 'laboratory' },
    operation: { register: 'operation' },
    antibioticsOnBoard: { blank: 'none' },
  },
} as const satisfies FormArrangement
