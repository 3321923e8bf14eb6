import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Blood that was measured, as printed. */
export const bloodTest = {
  kind: 'blood-test',
  place: 'case',
  chapters: ['Work-up', 'Ward'],
  writtenBy: ['nurse', 'surgeon', 'anaesthetist'],
  amendable: true,
  sections: [
    { id: 'sample', fields: ['panel', 'measured', 'laboratory'] },
    { id: 'results', fields: ['results'] },
    { id: 'words', fields: ['text'] },
  ],
  fields: { laboratory: { register: 'laboratory', shownWhen: { field: 'measured', is: ['laboratory'] } } },
} as const satisfies FormArrangement
