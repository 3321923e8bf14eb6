import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Who the animal is. */
export const identity = {
  kind: 'identity',
  place: 'case',
  chapters: ['Referral'],
  writtenBy: ['desk', 'nurse'],
  amendable: true,
  sections: [
    { id: 'animal', fields: ['name', 'species', 'breed', 'sex', 'neutered', 'born', 'flatFace'] },
    { id: 'marks', fields: ['chip', 'abcb1'] },
    { id: 'people', fields: ['household', 'referringVet'] },
  ],
  fields: { household: { register: 'household' }, referringVet: { register: 'vet' }, chip: { blank: 'not-assessed' } },
} as const satisfies FormArrangement
