import type { FormWords } from '#core/forms/words.ts'

export const erasure = {
  kind: 'erasure',
  purpose: 'Orders that what one entry says is erased. Its place in the journal stays.',
  sections: { order: 'Order' },
  fields: {
    entry: { label: 'Which entry?' },
    because: {
      label: 'Because',
      help: 'The law or the wish it follows.',
      wrong: 'Write the reason in at least three letters.',
    },
    orderedBy: { label: 'Ordered by' },
  },
} as const satisfies FormWords
