import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, lookedForNotFound } from '../follow-up/provenance.ts'

/** The deep ear is washed out under anaesthesia. */
export const deepFlush = choiceOption({
  id: 'deep-flush',
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
  cat: { wrong: [commonPractice] },
})
