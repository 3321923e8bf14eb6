import type { FormWords } from '#core/forms/words.ts'

export const death = {
  kind: 'death',
  purpose: 'Ends everything owed by or to the owner, cancels the calendar, closes the questions.',
  sections: { death: 'Death' },
  fields: {
    how: { label: 'How', options: { died: 'died', euthanasia: 'put to sleep' } },
    cause: { label: 'Cause' },
    relatedToEar: { label: 'Related to the ear?', options: { possibly: 'possibly', unknown: 'not known' } },
    relatedToOperation: {
      label: 'Related to the operation or the anaesthetic?',
      help: 'A death on the table is, whatever the ear had to do with it.',
      options: { unknown: 'not known' },
    },
    heardFrom: { label: 'Heard from', options: { us: 'us', owner: 'owner', 'referring-vet': 'referring vet' } },
  },
} as const satisfies FormWords
