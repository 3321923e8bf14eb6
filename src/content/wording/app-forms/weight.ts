import type { FormWords } from '#core/forms/words.ts'

export const weight = {
  kind: 'weight',
  purpose: 'What the animal weighs and how we know.',
  sections: { weight: 'Weight' },
  fields: {
    weight: { label: 'Weight with its unit', help: 'For example 12.4 kg or 27 lb. The unit is never guessed.' },
    how: {
      label: 'How do we know?',
      options: { scale: 'on the scale', estimated: 'estimated', reported: 'reported by somebody' },
    },
    bodyCondition: { label: 'Body condition, 1 thin to 9 fat', none: 'not assessed' },
  },
} as const satisfies FormWords
