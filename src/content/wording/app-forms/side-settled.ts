import type { FormWords } from '#core/forms/words.ts'

export const sideSettled = {
  kind: 'side-settled',
  purpose: 'A named person looked at every source of the side and says which ear it is, and which sources are wrong.',
  sections: { side: 'The side' },
  fields: {
    side: { label: 'Which ear is it?', options: { LEFT: 'LEFT', RIGHT: 'RIGHT' } },
    overruled: {
      label: 'Which sources are wrong?',
      help: 'A choice, an agreement or a booking that is wrong is amended instead: it was decided by somebody.',
    },
    because: { label: 'How you know', help: 'Animal, mark, images and papers in hand: what you looked at.' },
  },
} as const satisfies FormWords
