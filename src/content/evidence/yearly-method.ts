import type { Sourced } from '#core/evidence/sourced.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { houseJudgementOnly } from '../follow-up/provenance.ts'

/** What both methods have in common. */
const common = [
  'A sign counts when it is new or worse than on the baseline of the same side; without a baseline, and without a look that could have seen it, it is not known. Not known is never no.',
  'An ear, animal or operation counts once its time has come on the day of looking, also when it happened sooner. The share is that of those known; its interval is exact (Clopper and Pearson), beside it that of Wilson, and where an animal has two known ears one that takes them as tied to each other. Beside it stands the share if none, and if all, of those not known had it.',
  'A share is withheld where fewer are known than the clinic set; where none of those known had it, the upper end of the exact interval is said in its place.',
  'Late swellings, abscesses and tracts over time: Aalen–Johansen with death as an end of its own, variance by the delta method, limits on the log-log scale, and no share where too few are followed. The mean without one is restricted to twelve months. Blink: Kaplan–Meier from the operation to the first look at which it was as before.',
  'Watched results: a risk-adjusted log-likelihood chart over the results of this year alone, in the order of the operations, against the share that the studies let expect on the day of freezing. It says nothing of any person.',
  'Shares are rounded to six decimals in the files.',
] as const

/**
 * How a yearly report is made from its frozen data, by version. A version that a report was frozen with is never edited
 * and never taken away: a change of the method is another version.
 */
export const yearlyMethods = {
  '1': [
    'An ear belongs to the year of the calendar in which it was operated, where the clinic is. What is known of it is what was on record on the day of looking, by the rules of counting that held on that day; both stand in the data.',
    ...common,
  ],
  '2': [
    'An ear belongs to the year of the calendar in which it was operated, where the clinic is. What is known of it is what was seen up to the day of looking, as far as it was on record when the year was frozen, by the rules of counting that held then; the day and the rules stand in the data.',
    ...common,
    'Ears are counted also by the main reason of their operation, as the signed summary says it, with the same intervals and the same minimum. Where no summary says it, or the data was frozen before rows kept it, the reason is not recorded: a group of its own, never shared out among the others.',
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>

export type YearlyMethod = keyof typeof yearlyMethods
export const yearlyMethod: YearlyMethod = '2'

/** Rows of an operation that fewer animals had in the year are not given to anybody outside. */
export const smallBelow: Sourced<number> = {
  value: 5,
  ...houseJudgementOnly,
  where: 'Of fewer than five animals somebody who knows one of them could find it.',
}

/** Within this time an erratum follows the entry that made a frozen report wrong. */
export const erratumWithin: Sourced<Period> = { value: { count: 14, unit: 'days' }, ...houseJudgementOnly }
