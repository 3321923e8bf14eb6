import type { FormWords } from '#core/forms/words.ts'

const seen = { none: 'none', few: 'few', some: 'some', many: 'many' } as const

export const cytology = {
  kind: 'cytology',
  purpose: 'One ear under the microscope: what lives there, and which cells came.',
  sections: { smear: 'The smear', seen: 'Seen', words: 'Anything else' },
  fields: {
    site: {
      label: 'Taken from',
      options: { canal: 'canal', bulla: 'bulla', mass: 'mass', node: 'lymph node', skin: 'skin beside the ear' },
    },
    readBy: { label: 'Read by', help: 'Who sat at the microscope.' },
    cocci: { label: 'Cocci', options: seen },
    rods: { label: 'Rods', options: seen },
    yeast: { label: 'Yeast', options: seen },
    inflammatoryCells: { label: 'Inflammatory cells', options: seen },
    oddCells: {
      label: 'Cells that do not belong here',
      help: 'A smear does not say what a mass is: send tissue.',
      options: seen,
    },
    biofilm: { label: 'Biofilm' },
    text: { label: 'Anything else', help: 'Where the bacteria lie, mites, debris.' },
  },
} as const satisfies FormWords
