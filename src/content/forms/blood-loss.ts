import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What was in the jar and on the swabs since the last entry. */
export const bloodLoss = {
  kind: 'blood-loss',
  place: 'case',
  chapters: ['Theatre'],
  writtenBy: ['nurse', 'anaesthetist'],
  amendable: true,
  sections: [
    { id: 'jar', fields: ['jar', 'lavageIn', 'lavageInJar'] },
    { id: 'swabs', fields: ['swabs'] },
  ],
  fields: { lavageInJar: { blank: 'not-assessed' } },
} as const satisfies FormArrangement
