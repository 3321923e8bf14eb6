import type { FormWords } from '#core/forms/words.ts'

export const note = {
  kind: 'note',
  purpose: 'Words that belong nowhere else.',
  sections: { note: 'Note' },
  fields: { text: { label: 'Note' } },
} as const satisfies FormWords
