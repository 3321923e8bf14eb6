import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What somebody drew on the plate; the drawing itself is made there. */
export const plateDrawing = {
  kind: 'plate-drawing',
  place: 'case',
  chapters: ['Referral', 'Work-up', 'Choice', 'Agreement', 'Theatre', 'Ward', 'Home', 'Year'],
  writtenBy: ['surgeon', 'nurse'],
  amendable: true,
  sections: [{ id: 'drawing', fields: ['title', 'drawnFor', 'watchedBy', 'strokes', 'marks', 'plate', 'parameters'] }],
  fields: {
    plate: { control: 'carried' },
    parameters: { control: 'carried' },
    strokes: { control: 'carried' },
    marks: { control: 'carried' },
    watchedBy: { register: 'contact-or-person' },
  },
} as const satisfies FormArrangement
