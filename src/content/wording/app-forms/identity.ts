import type { FormWords } from '#core/forms/words.ts'

export const identity = {
  kind: 'identity',
  purpose: 'Who the animal is. Names and phones of people stand in the contacts.',
  sections: { animal: 'The animal', marks: 'Chip and gene', people: 'Household and referring vet' },
  fields: {
    name: { label: 'Name' },
    species: { label: 'Species', options: { dog: 'dog', cat: 'cat' } },
    breed: { label: 'Breed', help: 'Leave empty when it is not known.' },
    sex: { label: 'Sex', options: { female: 'female', male: 'male', unknown: 'not known' } },
    neutered: { label: 'Neutered', options: { unknown: 'not known' } },
    born: { label: 'Born', help: 'As finely as it is known: 2019, or March 2019, or 5 March 2019.' },
    flatFace: { label: 'Flat face (short nose)', options: { unknown: 'not known' } },
    chip: {
      label: 'Chip number',
      help: '15 digits, as the reader shows them.',
      none: 'no chip read',
      wrong: 'A chip number has 15 digits, without spaces. Scan it again.',
    },
    abcb1: {
      label: 'ABCB1 gene test',
      options: {
        normal: 'normal',
        'mutant-normal': 'one changed copy',
        'mutant-mutant': 'two changed copies',
        unknown: 'not tested',
      },
    },
    household: { label: 'Household' },
    referringVet: { label: 'Referring vet', none: 'no referring vet' },
  },
} as const satisfies FormWords
