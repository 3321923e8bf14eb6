import { addDays, dayAfter, dayOf } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'
import type { TroubleWindow } from './scheme.ts'

/**
 * The stretch of time in which a day lies, counted in months of the calendar since the day of the operation. The last
 * day of a stretch belongs to it: "0–3, more than 3 to 6".
 *
 * @example windowOf('2026-02-10', '2026-05-11', windows) // 'short'
 */
export function windowOf(operated: string, on: string, windows: readonly TroubleWindow[]): TroubleWindow['id'] | null {
  const found = windows.find(
    ({ untilMonths }) => untilMonths === null || on <= dayAfter(operated, { count: untilMonths, unit: 'months' }),
  )
  return found?.id ?? null
}

/**
 * Whether a moment lies within so many days of the operation; null where it is known too coarsely to say. A month or a
 * year is all its days.
 *
 * @example isWithinDays('2026-02-10', moment('March 2026'), 30) // null: 12 March is still within, 13 March is not
 */
export function isWithinDays(operated: string, moment: Moment, days: number): boolean | null {
  const first = dayOf(moment)
  const last = lastDayOf(moment, first)
  const end = addDays(operated, days)
  if (last <= end) return true
  return first > end ? false : null
}

function lastDayOf({ precision }: Moment, first: string): string {
  switch (precision) {
    case 'year':
      return addDays(dayAfter(first, { count: 12, unit: 'months' }), -1)
    case 'month':
      return addDays(dayAfter(first, { count: 1, unit: 'months' }), -1)
    default:
      return first
  }
}
