import type { FormWords } from '#core/forms/words.ts'
import { figuresApproved } from './figures-approved.ts'

const { text: _, ...fields } = figuresApproved.fields

export const figuresLeft = {
  kind: 'figures-left',
  purpose: 'Counts of our own that changed were looked at, and what owners hear was left as it is.',
  sections: { figures: 'Figures' },
  fields: { ...fields, because: { label: 'Why it stays' } },
} as const satisfies FormWords
