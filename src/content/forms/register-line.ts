import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One line of a controlled-drug register; drug, strength and form are those of the register it is written in. */
export const registerLine = {
  kind: 'register-line',
  place: 'clinic',
  chapters: [],
  writtenBy: ['anaesthetist', 'nurse', 'surgeon', 'manager'],
  amendable: true,
  sections: [
    {
      id: 'line',
      fields: ['what', 'amount', 'ampoule', 'case', 'paper', 'witness', 'text', 'drug', 'strength', 'form'],
    },
  ],
  fields: {
    drug: { control: 'carried' },
    strength: { control: 'carried' },
    form: { control: 'carried' },
    what: { control: 'select' },
    ampoule: { shownWhen: { field: 'what', is: ['drawn'] } },
    case: { register: 'case', shownWhen: { field: 'what', is: ['drawn'] } },
    paper: { shownWhen: { field: 'what', is: ['received', 'destroyed', 'sent-back'] } },
    witness: { register: 'person', blank: 'none' },
  },
} as const satisfies FormArrangement
