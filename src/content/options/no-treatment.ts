import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, lookedForNotFound } from '../follow-up/provenance.ts'

/** The ear is left; pain may still be treated. */
export const noTreatment = choiceOption({
  id: 'no-treatment',
  species: ['dog', 'cat'],
  known: {
    done: [commonPractice],
    good: [commonPractice],
    bad: [commonPractice],
    day: [commonPractice],
    work: [commonPractice],
    visits: [commonPractice],
    money: [commonPractice],
    wrong: [commonPractice],
    unknown: [lookedForNotFound],
  },
})
