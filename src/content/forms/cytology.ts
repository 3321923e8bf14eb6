import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One ear under the microscope. */
export const cytology = {
  kind: 'cytology',
  place: 'case',
  chapters: ['Work-up', 'Year'],
  writtenBy: ['nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'smear', fields: ['site', 'readBy'] },
    { id: 'seen', fields: ['cocci', 'rods', 'yeast', 'inflammatoryCells', 'oddCells', 'biofilm'] },
    { id: 'words', fields: ['text'] },
  ],
  fields: { readBy: { register: 'person', free: true } },
} as const satisfies FormArrangement
