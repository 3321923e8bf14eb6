import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Another file is the same animal. */
export const merge = {
  kind: 'merge',
  place: 'correction',
  chapters: [],
  writtenBy: ['desk', 'manager', 'surgeon'],
  amendable: false,
  sections: [
    { id: 'same', fields: ['otherStream', 'otherAnimal', 'matchedOn'] },
    { id: 'second', fields: ['secondPerson'] },
  ],
  fields: {
    otherStream: { register: 'case' },
    otherAnimal: { register: 'animal' },
    secondPerson: { register: 'person' },
  },
} as const satisfies FormArrangement
