import type { FormWords } from '#core/forms/words.ts'

export const withdrawal = {
  kind: 'withdrawal',
  purpose: 'Takes a wrong entry back. It stays readable in the history.',
  sections: { why: 'Why' },
  fields: {
    because: {
      label: 'Because',
      options: {
        wrong: 'it is wrong',
        twice: 'it was written twice',
        'wrong-animal': 'it is about another animal',
        other: 'another reason',
      },
    },
  },
} as const satisfies FormWords
