import { choiceOption } from '#core/choice/option.ts'
import { commonPractice, readStudy } from '../follow-up/provenance.ts'

/** The canal goes down to its deep end; the bulla stays closed. */
export const subtotalAblation = choiceOption({
  id: 'subtotal-ablation',
  species: ['dog', 'cat'],
  known: {
    done: [commonPractice],
    good: [{ sources: ['mathews-2006'], where: '18 dogs, one cat', ...readStudy }],
    bad: [commonPractice],
    day: [commonPractice],
    work: [commonPractice],
    visits: [commonPractice],
    money: [commonPractice],
    wrong: [commonPractice, { sources: ['mathews-2006'], where: '18 dogs, one cat', ...readStudy }],
    unknown: [{ sources: ['mathews-2006'], where: '18 dogs, one cat', ...readStudy }],
  },
  cat: { unknown: [{ sources: ['mathews-2006'], where: '18 dogs, one cat', ...readStudy }] },
})
