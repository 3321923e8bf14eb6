import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, lookedForNotFound, readSecondHand, readStudy } from '../follow-up/provenance.ts'

/** Both ears under one anaesthetic. */
export const bothInOneSession = choiceOption({
  id: 'both-in-one-session',
  species: ['dog', 'cat'],
  known: {
    done: [commonPractice],
    good: [commonPractice],
    bad: [{ sources: ['bsava-head-neck-thoracic'], where: 'manual page 78', ...readSecondHand }, commonPractice],
    day: [commonPractice],
    work: [commonPractice],
    visits: [commonPractice],
    money: [commonPractice],
    wrong: [
      { sources: ['bsava-head-neck-thoracic'], where: 'manual page 78', ...readSecondHand },
      { sources: ['coleman-2016'], ...readStudy },
    ],
    unknown: [{ sources: ['coleman-2016'], ...readStudy }, lookedForNotFound],
  },
  cat: {
    wrong: [{ sources: ['wainberg-2019'], ...readStudy }],
    unknown: [{ sources: ['wainberg-2019'], ...readStudy }, lookedForNotFound],
  },
})
