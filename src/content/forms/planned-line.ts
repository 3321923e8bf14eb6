import type { FormArrangement } from '#core/forms/arrangement.ts'
import { routes, uses } from '#core/formulary/words.ts'

/** One line of the dose plan as it was worked out. */
export const plannedLine = {
  kind: 'planned-line',
  place: 'case',
  chapters: ['Theatre'],
  writtenBy: ['anaesthetist', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'drug', fields: ['line', 'drug', 'use', 'route', 'qualifier'] },
    { id: 'dose', fields: ['dose', 'because', 'plan'] },
    { id: 'how', fields: ['how', 'deficit', 'blood'] },
    { id: 'amount', fields: ['weight', 'shelfItem', 'stock', 'amount', 'volume', 'drawn', 'worked'] },
  ],
  fields: {
    drug: { register: 'drug' },
    use: { options: uses },
    route: { options: routes },
    shelfItem: { register: 'shelf-item' },
  },
} as const satisfies FormArrangement
