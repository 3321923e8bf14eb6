import type { Sourced } from '#core/evidence/sourced.ts'
import { commonPractice } from '../follow-up/provenance.ts'

/**
 * From which day on a look, or what somebody tells, is the one after a year: for our counts and for our trouble alike. The
 * visit is asked for from ten months on, and ten months are 303 days or a few more.
 */
export const yearLookFromDay: Sourced<number> = {
  value: 303,
  ...commonPractice,
  where: 'twelve months, give or take two: ten months of the calendar are at least 303 days',
}
