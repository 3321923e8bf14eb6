import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, lookedForNotFound, readNotes } from '../follow-up/provenance.ts'

/** Drops, tablets and washes go on. */
export const medicalControl = choiceOption({
  id: 'medical-control',
  species: ['dog', 'cat'],
  known: {
    done: [commonPractice],
    good: [commonPractice],
    bad: [commonPractice, { sources: ['house-2015-wsava'], ...readNotes }],
    day: [commonPractice],
    work: [commonPractice],
    visits: [commonPractice],
    money: [commonPractice],
    wrong: [commonPractice],
    unknown: [lookedForNotFound],
  },
})
