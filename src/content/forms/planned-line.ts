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
    { id: 'amount', fields: ['weight', 'stock', 'amount', 'volume', 'drawn'] },
  ],
  fields: { drug: { register: 'drug' }, use: { options: uses }, route: { options: routes } },
} as const satisfies FormArrangement
