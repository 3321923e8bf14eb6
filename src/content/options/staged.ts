import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, lookedForNotFound } from '../follow-up/provenance.ts'

/** One ear, then the other under an anaesthetic of its own. */
export const staged = choiceOption({
  id: 'staged',
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
