import { Temporal } from 'temporal-polyfill'
import { addDays } from './calendar-day.ts'
import { afterMinutes, instantText, type Moment } from './moment.ts'

/**
 * One time on the wall clock at home, and the instant it falls on.
 * `skipped`: the clocks jumped over it that day; it is taken as much later as the clocks jumped (01:30 becomes 02:30).
 * `twice`: the clocks show it twice that day; the first showing counts. Both are also what RFC 5545, 3.3.5, says.
 */
export type WallTime = {
  readonly day: string
  readonly time: string
  readonly at: string
  /** What the clock on the wall says at that instant: differs from `time` only when it was skipped. */
  readonly shown: string
  readonly clock: 'plain' | 'skipped' | 'twice'
}

/** The instant of a wall-clock time on one day in one zone. */
export function wallTime(day: string, time: string, zone: string): WallTime {
  const local = Temporal.PlainDateTime.from(`${day}T${time}`)
  const earlier = local.toZonedDateTime(zone, { disambiguation: 'earlier' })
  const chosen = local.toZonedDateTime(zone, { disambiguation: 'compatible' })
  const later = local.toZonedDateTime(zone, { disambiguation: 'later' })
  const plain = earlier.toInstant().equals(later.toInstant())
  const clock = plain ? 'plain' : earlier.toPlainDateTime().equals(local) ? 'twice' : 'skipped'
  const shown = chosen.toPlainTime().toString({ smallestUnit: 'minute' })
  return { day, time, at: instantText(chosen.toInstant()), shown, clock }
}

/**
 * The same clock times every day, from the first time of the first day: the plan of a tired owner at home.
 * A tablet at 08:00 and 20:00 stays at 08:00 and 20:00 whatever the clocks do.
 */
export function dailyWallTimes(plan: {
  readonly times: readonly string[]
  readonly firstDay: string
  readonly firstTime: string
  readonly days: number
  /** 2 for every second day, the first day being one of them. */
  readonly everyDays?: number
  readonly zone: string
}): WallTime[] {
  const times = [...new Set(plan.times)].sort()
  const found: WallTime[] = []
  for (let index = 0; index < plan.days; index += plan.everyDays ?? 1) {
    const day = addDays(plan.firstDay, index)
    for (const time of times) {
      if (index === 0 && time < plan.firstTime) continue
      found.push(wallTime(day, time, plan.zone))
    }
  }
  return found.sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
}

/**
 * Times so many hours of real time apart, as a ward gives them: six-hourly stays six hours when the clocks change.
 *
 * @example elapsedTimes(tenInTheEvening, 6, 4) // 22:00, 05:00, 11:00, 17:00 in the night the clocks go forward
 */
export function elapsedTimes(first: Moment, everyHours: number, count: number): Moment[] {
  return Array.from({ length: count }, (_, index) => afterMinutes(first, index * everyHours * 60))
}
