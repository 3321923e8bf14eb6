import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, readSecondHand, readStudy } from '../follow-up/provenance.ts'

/** A polyp of a cat is pulled out through canal or mouth. */
export const traction = choiceOption({
  id: 'traction',
  species: ['cat'],
  known: {
    done: [commonPractice],
    good: [commonPractice],
    bad: [
      { sources: ['anderson-2000'], ...readStudy },
      { sources: ['bsava-head-neck-thoracic'], where: 'manual page 80', ...readSecondHand },
    ],
    day: [commonPractice, { sources: ['greci-2014'], ...readStudy }],
    work: [commonPractice],
    visits: [commonPractice],
    money: [commonPractice],
    wrong: [
      { sources: ['greci-2014'], ...readStudy },
      { sources: ['anderson-2000'], ...readStudy },
    ],
    unknown: [commonPractice, { sources: ['anderson-2000'], ...readStudy }],
  },
})
