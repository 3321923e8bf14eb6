import { choiceOption } from '#core/choice/option.ts'
import { commonPractice } from '../follow-up/provenance.ts'

/** Told as every other option is, without pressure. */
export const euthanasia = choiceOption({
  id: 'euthanasia',
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
    unknown: [commonPractice],
  },
})
