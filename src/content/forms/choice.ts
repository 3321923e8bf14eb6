import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What was offered for this ear, chosen or declined, and what is missing. */
export const choice = {
  kind: 'choice',
  place: 'case',
  chapters: ['Choice'],
  writtenBy: ['surgeon'],
  amendable: true,
  sections: [
    { id: 'weighing', fields: ['for', 'against', 'missing'] },
    { id: 'options', fields: ['options'] },
    { id: 'session', fields: ['session'] },
  ],
  fields: { 'options.option': { control: 'select' } },
} as const satisfies FormArrangement
