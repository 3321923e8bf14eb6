import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, lookedForNotFound, readNotes, readSecondHand, readStudy } from '../follow-up/provenance.ts'

/** The whole canal goes and the bulla is opened from the side. */
export const tecaLbo = choiceOption({
  id: 'teca-lbo',
  species: ['dog', 'cat'],
  known: {
    done: [commonPractice],
    good: [
      { sources: ['house-2015-wsava'], ...readNotes },
      { sources: ['white-1990', 'doyle-2004'], ...readStudy },
    ],
    bad: [
      { sources: ['fox-2008', 'coleman-2016'], ...readStudy },
      { sources: ['bsava-head-neck-thoracic'], where: 'manual page 78', ...readSecondHand },
    ],
    day: [commonPractice],
    work: [commonPractice, { sources: ['hartrum-2025'], ...readStudy }],
    visits: [commonPractice],
    money: [commonPractice],
    wrong: [
      { sources: ['sharp-1990', 'smeak-1996'], ...readStudy },
      { sources: ['hartrum-2025'], ...readStudy },
      { sources: ['esposito-2026'], ...readStudy },
    ],
    unknown: [lookedForNotFound],
  },
  cat: {
    bad: [
      { sources: ['bacon-2003'], ...readStudy },
      { sources: ['fox-2008', 'coleman-2016'], ...readStudy },
    ],
  },
})
