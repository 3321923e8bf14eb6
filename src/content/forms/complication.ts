import { signsOfBefore } from '#core/complications/state-before.ts'
import type { FormArrangement } from '#core/forms/arrangement.ts'

/** A trouble in or after an operation. */
export const complication = {
  kind: 'complication',
  place: 'case',
  chapters: ['Ward', 'Home', 'Year'],
  writtenBy: ['nurse', 'surgeon', 'anaesthetist'],
  amendable: true,
  sections: [
    { id: 'event', fields: ['event', 'operation', 'firstNoticed', 'noticedBy', 'before'] },
    { id: 'needed', fields: ['needed', 'lasting'] },
    { id: 'judged', fields: ['judged', 'judgedBy', 'because'] },
    { id: 'more', fields: ['text', 'readGrade'] },
  ],
  fields: {
    event: { control: 'select' },
    operation: { register: 'operation' },
    firstNoticed: { now: true },
    before: { control: 'choice', shownWhen: { field: 'event', is: signsOfBefore }, otherwise: 'as-recorded' },
    needed: { control: 'choice' },
    judgedBy: {
      register: 'person',
      shownWhen: { field: 'judged', is: ['complication', 'sequela', 'failure-to-cure', 'was-there-before'] },
    },
    because: {
      shownWhen: { field: 'judged', is: ['complication', 'sequela', 'failure-to-cure', 'was-there-before'] },
    },
  },
} as const satisfies FormArrangement
