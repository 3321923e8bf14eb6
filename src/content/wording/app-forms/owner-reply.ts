import type { FormWords } from '#core/forms/words.ts'

export const ownerReply = {
  kind: 'owner-reply',
  purpose: 'An answer that the owner reads behind the private link, with your name and the date.',
  sections: { answer: 'Answer' },
  fields: {
    note: { label: 'To which note?' },
    text: { label: 'Your answer', help: 'Plain words: the owner reads it as you write it.' },
  },
} as const satisfies FormWords
