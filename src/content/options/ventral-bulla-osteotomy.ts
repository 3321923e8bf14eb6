import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, readNotes, readSecondHand, readStudy, standardAnatomy } from '../follow-up/provenance.ts'

/** The bulla is opened from below; the canal stays. */
export const ventralBullaOsteotomy = choiceOption({
  id: 'ventral-bulla-osteotomy',
  species: ['dog', 'cat'],
  known: {
    done: [commonPractice],
    good: [{ sources: ['house-2015-wsava'], ...readNotes }, standardAnatomy],
    bad: [standardAnatomy, commonPractice],
    day: [commonPractice],
    work: [commonPractice],
    visits: [commonPractice],
    money: [commonPractice],
    wrong: [commonPractice],
    unknown: [commonPractice],
  },
  cat: {
    good: [
      { sources: ['anders-2008'], ...readStudy },
      { sources: ['bsava-head-neck-thoracic'], where: 'manual page 80', ...readSecondHand },
    ],
    wrong: [
      { sources: ['wainberg-2019'], ...readStudy },
      { sources: ['anders-2008', 'trevor-1993'], ...readStudy },
    ],
  },
})
