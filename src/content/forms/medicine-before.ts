import type { FormArrangement } from '#core/forms/arrangement.ts'

/** One medicine given before us. */
export const medicineBefore = {
  kind: 'medicine-before',
  place: 'case',
  chapters: ['Referral', 'Work-up'],
  writtenBy: ['nurse', 'surgeon'],
  amendable: true,
  sections: [
    { id: 'medicine', fields: ['written', 'substance', 'route', 'dose'] },
    { id: 'when', fields: ['from', 'ongoing', 'until'] },
    { id: 'effect', fields: ['effect'] },
  ],
  fields: { substance: { register: 'drug' }, until: { shownWhen: { field: 'ongoing', is: ['no'] } } },
} as const satisfies FormArrangement
