import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Blocks are lifted now; the second name follows. */
export const emergencyDeclared = {
  kind: 'emergency-declared',
  place: 'case',
  chapters: ['Theatre', 'Ward'],
  writtenBy: ['surgeon', 'anaesthetist', 'nurse'],
  amendable: true,
  sections: [{ id: 'emergency', fields: ['because', 'lifts'] }],
} as const satisfies FormArrangement
