import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Somebody outside the clinic was told. */
export const told = {
  kind: 'told',
  place: 'case',
  chapters: ['Work-up', 'Home', 'Year'],
  writtenBy: ['surgeon', 'nurse', 'desk'],
  amendable: true,
  sections: [{ id: 'told', fields: ['about', 'who', 'contact', 'by', 'text'] }],
  fields: {
    about: {
      entries: [
        'specimen-result',
        'result-read',
        'medicine-change',
        'discharge',
        'refile',
        'withdrawal',
        'imaging',
        'late-event',
        'complication',
        'operation-summary',
        'theatre-stamp',
      ],
    },
    contact: { register: 'contact' },
  },
} as const satisfies FormArrangement
