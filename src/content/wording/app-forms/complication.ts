import type { FormWords } from '#core/forms/words.ts'
import { troubleInEnglish } from '../trouble.ts'

export const complication = {
  kind: 'complication',
  purpose:
    'Something went wrong in or after the operation. What it was, when, how it was before, and what it needed: every published grade is worked out from that.',
  sections: {
    event: 'What went wrong',
    needed: 'What it needed, and how it ended',
    judged: 'What we hold it for',
    more: 'Anything else',
  },
  fields: {
    event: { label: 'What', options: troubleInEnglish.events },
    operation: { label: 'After which operation' },
    firstNoticed: { label: 'First noticed', help: '5 March 2026, 14:20, or 5 March 2026, or March 2026.' },
    noticedBy: {
      label: 'Noticed by',
      options: { us: 'us', 'referring-vet': 'referring vet', owner: 'owner', elsewhere: 'another practice' },
    },
    before: {
      label: 'Was it there before the operation?',
      help: 'Where a baseline is on record it counts; then leave the first answer.',
      options: {
        'as-recorded': 'as the baseline says',
        absent: 'no',
        milder: 'yes, milder',
        same: 'yes, the same',
        'not-known': 'not known',
      },
    },
    needed: {
      label: 'What did it need, all in all?',
      help: 'The most it needed so far. When it needs more later, correct this entry.',
      options: troubleInEnglish.needs,
    },
    lasting: {
      label: 'How does the part work in the end?',
      options: {
        'not-known': 'not known yet',
        full: 'as before',
        acceptable: 'not as before, acceptable',
        unacceptable: 'not acceptable, for good',
      },
    },
    judged: {
      label: 'What is it?',
      help: 'Expected: comes with this operation, however well it went. Not cured: the illness itself is not gone. The program proposes; a person decides.',
      options: troubleInEnglish.classes,
    },
    judgedBy: { label: 'Decided by, if not by you', none: 'whoever writes this' },
    because: { label: 'Why' },
    text: { label: 'In words' },
    readGrade: {
      label: 'Grade read in the published terms of VCOG-CTCAE v2',
      open: 'Write a grade that was read there',
      none: 'nobody looked it up',
    },
    'readGrade.term': { label: 'The term as it is called there' },
    'readGrade.grade': {
      label: 'Grade',
      options: { '1': '1', '2': '2', '3': '3', '4': '4', '5': '5' },
    },
  },
} as const satisfies FormWords
