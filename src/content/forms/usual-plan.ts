import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A named dose plan of the house. */
export const usualPlan = {
  kind: 'usual-plan',
  place: 'clinic',
  chapters: [],
  writtenBy: ['anaesthetist', 'surgeon', 'manager'],
  amendable: true,
  sections: [
    { id: 'plan', fields: ['plan', 'species'] },
    { id: 'lines', fields: ['lines'] },
  ],
  fields: {
    'lines.drug': { register: 'drug' },
    'lines.shelfItem': { register: 'shelf-item' },
    'lines.use': { control: 'select' },
    'lines.route': { control: 'select' },
  },
} as const satisfies FormArrangement
