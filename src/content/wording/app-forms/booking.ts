import type { FormWords } from '#core/forms/words.ts'
import { procedureWords } from '../app-form-words.ts'

export const booking = {
  kind: 'booking',
  purpose: 'Opens an operation: which ear, what, when, under which agreement.',
  sections: { operation: 'The operation', people: 'People', agreement: 'Under which agreement?' },
  fields: {
    side: { label: 'Side' },
    procedure: { label: 'Operation', options: procedureWords },
    plannedFor: { label: 'Planned for', help: 'Day and time, for example 10 February 2026, 09:00.' },
    surgeon: { label: 'Surgeon' },
    anaesthetist: { label: 'Anaesthetist', none: 'not named yet' },
    agreement: { label: 'Under which agreement?', none: 'no agreement yet' },
  },
} as const satisfies FormWords
