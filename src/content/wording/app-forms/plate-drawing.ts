import type { FormWords } from '#core/forms/words.ts'

export const plateDrawing = {
  kind: 'plate-drawing',
  purpose: 'What was drawn on the plate of this ear, and for whom.',
  sections: { drawing: 'Drawing' },
  fields: {
    title: { label: 'Title' },
    drawnFor: { label: 'Drawn for', options: { owner: 'the owner', team: 'the team', record: 'the record' } },
    watchedBy: { label: 'Who watched' },
    strokes: { label: 'The drawing', help: 'Made on the plate, and changed there.' },
    marks: { label: 'Marked parts' },
    plate: { label: 'Number of the plate' },
    parameters: { label: 'What the plate was drawn from' },
  },
} as const satisfies FormWords
