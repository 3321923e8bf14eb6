import type { FormArrangement } from '#core/forms/arrangement.ts'
import { routes, uses } from '#core/formulary/words.ts'

/** What was really given. */
export const drugGiven = {
  kind: 'drug-given',
  place: 'case',
  chapters: ['Theatre', 'Ward'],
  writtenBy: ['anaesthetist', 'nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'drug', fields: ['drug', 'written', 'use'] },
    { id: 'dose', fields: ['amount', 'volume', 'route', 'site'] },
    { id: 'supply', fields: ['line', 'batch', 'ampoule'] },
  ],
  fields: { drug: { register: 'drug', free: true }, use: { options: uses }, route: { options: routes } },
} as const satisfies FormArrangement
