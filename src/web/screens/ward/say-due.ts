import { wardInEnglish as words } from '#content/wording/app-ward.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import { dayOf, daysBetween } from '#core/time/calendar-day.ts'
import { clockToldApart } from '#core/time/moment.ts'
import type { Due } from '#core/ward/due-list.ts'
import { sayDay } from '../../design/say-when.ts'

/** How late, or by when: with the clock, and the day where it is another one. */
export function sayDue({ item, band, minutesLate }: Due<OwedItem>, now: string): string {
  if (band === 'late') return fill(words.late, { time: sayMinutes(minutesLate) })
  const at = band === 'now' ? item.dueBy : item.dueFrom
  return fill(band === 'now' ? words.by : words.from, { at: clockNear(at, now, item.zone) })
}

/** "14:05" today, "tomorrow 02:05", "yesterday 23:40", else with its date. */
export function clockNear(at: string, now: string, zone: string): string {
  const ahead = daysBetween(dayOf({ at: now, zone }), dayOf({ at, zone }))
  const clock = clockToldApart(at, zone)
  if (ahead === 0) return clock
  if (ahead === -1) return fill(words.yesterday, { at: clock })
  return ahead === 1 ? fill(words.tomorrow, { at: clock }) : fill(words.onDay, { day: sayDay(at, zone), at: clock })
}

/**
 * A length of time in the two units that say it fairly.
 *
 * @example sayMinutes(130) // '2 h 10 min'
 */
export function sayMinutes(minutes: number): string {
  if (minutes < 60) return fill(words.minutes, { minutes: String(minutes) })
  const hours = Math.floor(minutes / 60)
  if (hours < 24) return fill(words.hours, { hours: String(hours), minutes: String(minutes % 60) })
  return fill(words.days, { days: String(Math.floor(hours / 24)), hours: String(hours % 24) })
}
