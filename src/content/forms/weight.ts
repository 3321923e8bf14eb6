import type { FormArrangement } from '#core/forms/arrangement.ts'

/** What the scale said. */
export const weight = {
  kind: 'weight',
  place: 'case',
  chapters: ['Work-up', 'Theatre', 'Ward'],
  writtenBy: ['nurse', 'anaesthetist', 'surgeon'],
  amendable: true,
  sections: [{ id: 'weight', fields: ['weight', 'how', 'bodyCondition'] }],
  fields: {
    weight: { control: 'body-weight' },
    typed: { answeredBy: 'weight' },
    bodyCondition: { control: 'choice', blank: 'not-assessed' },
  },
} as const satisfies FormArrangement
