import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, readNotes, readSecondHand } from '../follow-up/provenance.ts'

/** The vertical canal goes, the horizontal one gets a new opening. */
export const verticalCanalAblation = choiceOption({
  id: 'vertical-canal-ablation',
  species: ['dog', 'cat'],
  known: {
    done: [commonPractice],
    good: [commonPractice],
    bad: [
      { sources: ['bsava-head-neck-thoracic'], where: 'manual page 77', ...readSecondHand },
      { sources: ['house-2015-wsava'], ...readNotes },
    ],
    day: [commonPractice],
    work: [commonPractice],
    visits: [commonPractice],
    money: [commonPractice],
    wrong: [{ sources: ['bsava-head-neck-thoracic'], where: 'manual page 77', ...readSecondHand }],
    unknown: [{ sources: ['bsava-head-neck-thoracic'], where: 'manual page 77', ...readSecondHand }],
  },
})
