import type { OwedRules } from '#core/procedures/follow-up.ts'
import { houseJudgementOnly } from './provenance.ts'

/** When the owner is rung about rising costs, before the ceiling is passed. */
export const costRules = {
  /** Of 100 parts of the ceiling. */
  askFrom: {
    value: '80',
    ...houseJudgementOnly,
    where: 'four fifths leave room for the call before the ceiling is passed; the house’s own figure',
  },
  callWithin: {
    value: { count: 1, unit: 'days' },
    ...houseJudgementOnly,
    where: 'rung within a day, and before the ceiling is passed; the house’s own figure',
  },
  answerWithin: {
    value: { count: 1, unit: 'days' },
    ...houseJudgementOnly,
    where: 'a new edition is answered within a day; the house’s own figure',
  },
} as const satisfies OwedRules['costs']
