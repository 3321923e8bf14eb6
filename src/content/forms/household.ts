import type { FormArrangement } from '#core/forms/arrangement.ts'

/** The people around the animal. */
export const household = {
  kind: 'household',
  place: 'case',
  chapters: ['Referral'],
  writtenBy: ['desk', 'nurse'],
  amendable: true,
  sections: [
    { id: 'contacts', fields: ['contacts'] },
    { id: 'home', fields: ['language', 'otherAnimals'] },
  ],
  fields: { 'contacts.contact': { register: 'contact' } },
} as const satisfies FormArrangement
