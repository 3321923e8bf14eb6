import type { FormWords } from '#core/forms/words.ts'

export const otherEarPlan = {
  kind: 'other-ear-plan',
  purpose: 'What becomes of the ear that is not operated. Write it about that ear.',
  sections: { plan: 'Plan for this ear' },
  fields: {
    plan: {
      label: 'What is done',
      options: { nothing: 'nothing', watch: 'watch', treat: 'treat', 'operate-later': 'operate later' },
    },
    because: { label: 'Why' },
    reviewOn: { label: 'Looked at again on', help: 'For example 4 May 2026.', none: 'no day is set' },
  },
} as const satisfies FormWords
