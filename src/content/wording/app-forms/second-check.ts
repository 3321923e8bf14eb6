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
    plan: {
      label: 'Bound to',
      help: 'Lines of a dose plan are checked on its own page, which binds the name to weight, species and every line.',
    },
  },
} as const satisfies FormWords
