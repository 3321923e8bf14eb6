import { daysInEnglish as words } from '#content/wording/app-days.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, daysBetween, sayCalendarDay, weekdayOf } from '#core/time/calendar-day.ts'

/**
 * A day that somebody plans by: with "today" or "tomorrow", else with its weekday. The date stays beside it, so that a
 * print of yesterday does not mislead.
 *
 * @example sayNearDay('2026-03-03', '2026-03-02') // 'tomorrow, 3 March 2026'
 */
export function sayNearDay(day: string, today: string): string {
  const ahead = daysBetween(today, day)
  const said = sayCalendarDay(day)
  if (ahead === 0) return fill(words.today, { day: said })
  if (ahead === 1) return fill(words.tomorrow, { day: said })
  return fill(words.other, { weekday: words.weekdays[weekdayOf(day) - 1] ?? '', day: said })
}

/** The same for an instant, on the calendar of a zone. */
export function sayNearInstant(at: string, now: string, zone: string): string {
  return sayNearDay(dayOf({ at, zone }), dayOf({ at: now, zone }))
}
