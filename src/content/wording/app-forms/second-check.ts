import type { FormWords } from '#core/forms/words.ts'

export const secondCheck = {
  kind: 'second-check',
  purpose: 'A second person worked it out again and agrees or not.',
  sections: { check: 'Second check' },
  fields: {
    of: { label: 'What was checked' },
    verdict: {
      label: 'Verdict',
      help: 'When nobody else is in the house, say so. It is printed and counted.',
      options: { agrees: 'agrees', disagrees: 'does not agree', 'nobody-available': 'nobody available' },
    },
    text: { label: 'In words' },
  },
} as const satisfies FormWords
