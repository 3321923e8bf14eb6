import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Medicines at home change after the animal went home. */
export const medicineChange = {
  kind: 'medicine-change',
  place: 'case',
  chapters: ['Home', 'Year'],
  writtenBy: ['surgeon', 'anaesthetist'],
  amendable: true,
  sections: [
    { id: 'why', fields: ['read', 'because'] },
    { id: 'stops', fields: ['stops'] },
    { id: 'starts', fields: ['starts'] },
  ],
  fields: {
    read: { entries: ['result-read'], blank: 'none' },
    stops: { blank: 'none' },
    'stops.drug': { register: 'drug', free: true },
    starts: { blank: 'none' },
    'starts.drug': { register: 'drug', free: true },
  },
} as const satisfies FormArrangement
