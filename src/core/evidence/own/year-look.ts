import type { Side } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { addDays, dayOf, daysBetween } from '#core/time/calendar-day.ts'
import type { OwnCountingRules } from './own-outcome.ts'

/** A look that is too early to be the one after a year: day of the operation, how long after, and from which day on it is. */
export type EarlyYear = { readonly operated: string; readonly after: number; readonly from: string }

/**
 * Whether what is said of an ear on this day is too early to be its result after a year. Null where it is not, and where the
 * ear was not operated before that day: then there is no year to count.
 *
 * @example earlyYearLook(file, 'LEFT', '2026-03-16', ownCounting)?.after // 12
 */
export function earlyYearLook(
  file: Pick<CaseFile, 'theCase' | 'clinic'>,
  side: Side,
  on: string,
  { yearLookFromDay }: Pick<OwnCountingRules, 'yearLookFromDay'>,
): EarlyYear | null {
  const operated = operationsOf(file)
    .filter((one) => one.side === side && one.done !== null)
    .map(({ moment }) => dayOf({ at: moment.at, zone: file.clinic.zone }))
    .findLast((day) => day <= on)
  if (operated === undefined) return null
  const from = addDays(operated, yearLookFromDay.value)
  return on < from ? { operated, after: daysBetween(operated, on), from } : null
}
