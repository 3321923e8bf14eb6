import type { Sourced } from '#core/evidence/sourced.ts'
import { houseJudgementOnly } from './provenance.ts'

/** When the owner is rung about rising costs, before the ceiling is passed. */
export const costRules = {
  /** Of 100 parts of the ceiling. */
  askFrom: {
    value: '80',
    ...houseJudgementOnly,
    where: 'four fifths leave room for the call before the ceiling is passed; the house’s own figure',
  },
} as const satisfies { readonly askFrom: Sourced<string> }
