import type { FormWords } from '#core/forms/words.ts'
import { estimate } from './estimate.ts'

export const costSoFar = {
  kind: 'cost-so-far',
  purpose: 'What something has cost, so that the owner is rung before the ceiling is passed.',
  sections: { cost: 'The cost' },
  fields: {
    part: { label: 'Part', options: estimate.fields['lines.part'].options },
    what: { label: 'What' },
    amount: { label: 'How much' },
    finished: { label: 'Is this part finished?' },
    by: { label: 'Who says so' },
  },
} as const satisfies FormWords
