import type { FormWords } from '#core/forms/words.ts'

export const merge = {
  kind: 'merge',
  purpose: 'Says that another file is the same animal. Nothing is moved; taking this back parts them again.',
  sections: { same: 'Same animal', second: 'Second person' },
  fields: {
    otherStream: { label: 'The other file', wrong: 'Name a case, for example case:0042.' },
    otherAnimal: { label: 'The animal in that file' },
    matchedOn: {
      label: 'What agrees',
      help: 'A name alone is never enough.',
      options: { chip: 'chip', owner: 'owner', name: 'name', 'birth-date': 'birth date' },
    },
    secondPerson: { label: 'Second person who looked' },
  },
} as const satisfies FormWords
