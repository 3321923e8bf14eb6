import type { FormWords } from '#core/forms/words.ts'

export const refile = {
  kind: 'refile',
  purpose: 'An entry stood with the wrong animal. It is taken back there and filed here.',
  sections: { 'right-place': 'The right place' },
  fields: {
    toStream: { label: 'File' },
    toSubject: {
      label: 'About',
      options: {
        clinic: 'the clinic',
        household: 'the household',
        animal: 'the animal',
        ear: 'one ear',
        operation: 'an operation',
      },
    },
    'toSubject.household': { label: 'Household' },
    'toSubject.animal': { label: 'Animal' },
    'toSubject.side': { label: 'Side' },
    'toSubject.operation': { label: 'Operation' },
    copy: { label: 'The copy in the right place' },
  },
} as const satisfies FormWords
