import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, lookedForNotFound, readNotes, readSecondHand, readStudy } from '../follow-up/provenance.ts'

/** The outer wall of the vertical canal is laid open. */
export const lateralWallResection = choiceOption({
  id: 'lateral-wall-resection',
  species: ['dog', 'cat'],
  known: {
    done: [commonPractice],
    good: [commonPractice],
    bad: [
      { sources: ['brockman-2008-wsava'], ...readNotes },
      { sources: ['bsava-head-neck-thoracic'], where: 'manual page 76', ...readSecondHand },
    ],
    day: [commonPractice],
    work: [commonPractice],
    visits: [commonPractice],
    money: [commonPractice],
    wrong: [commonPractice, { sources: ['doyle-2004'], ...readStudy }],
    unknown: [{ sources: ['bsava-head-neck-thoracic'], where: 'manual page 77', ...readSecondHand }],
  },
  dog: {
    bad: [
      { sources: ['brockman-2008-wsava'], ...readNotes },
      { sources: ['bsava-head-neck-thoracic', 'sylvestre-1998'], where: 'manual page 76', ...readSecondHand },
    ],
  },
  cat: {
    unknown: [{ sources: ['bsava-head-neck-thoracic'], where: 'manual page 77', ...readSecondHand }, lookedForNotFound],
  },
})
