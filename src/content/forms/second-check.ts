import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A second person worked it out again. */
export const secondCheck = {
  kind: 'second-check',
  place: 'case',
  chapters: ['Theatre'],
  writtenBy: ['anaesthetist', 'nurse', 'surgeon'],
  amendable: true,
  sections: [{ id: 'check', fields: ['of', 'verdict', 'text', 'plan'] }],
  fields: {
    of: { entries: ['planned-line', 'count', 'drug-given', 'emergency-declared', 'discharge', 'medicine-change'] },
    plan: { control: 'carried', blank: 'optional' },
  },
} as const satisfies FormArrangement
