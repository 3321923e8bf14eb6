import type { FormWords } from '#core/forms/words.ts'

export const lateEvent = {
  kind: 'late-event',
  purpose:
    'A swelling, abscess or tract that came late. It belongs to the operation, whenever and wherever it was seen.',
  sections: { event: 'What came', needed: 'What it needs' },
  fields: {
    what: {
      label: 'What came',
      options: {
        swelling: 'swelling',
        abscess: 'abscess',
        'draining-tract': 'draining tract',
        'jaw-pain': 'pain of the jaw',
        'tumour-again': 'tumour again',
        other: 'something else',
      },
    },
    operation: { label: 'After which operation' },
    firstSeen: { label: 'First seen', help: 'March 2026, or 5 March 2026.' },
    seenBy: {
      label: 'Seen by',
      options: { us: 'us', 'referring-vet': 'referring vet', owner: 'owner', elsewhere: 'another practice' },
    },
    needed: {
      label: 'What does it need?',
      help: 'Once it was operated for it here, that is on record by itself. When it was done elsewhere, correct this entry.',
      options: {
        nothing: 'nothing',
        drug: 'drug',
        imaging: 'imaging',
        operation: 'operation, not done yet',
        'operation-done': 'operation, and it was done',
        'not-decided': 'not decided',
      },
    },
    text: { label: 'In words' },
  },
} as const satisfies FormWords
