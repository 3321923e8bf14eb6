import type { Period } from 'fhir/r4'
import { type Moment, wallClock } from '#core/time/moment.ts'

/**
 * A moment as a FHIR dateTime, no finer than it is known: `2019`, `2024-03`, `2024-03-05`, `2024-03-05T14:20:00+00:00`.
 * Where a time is given FHIR wants seconds and an offset; the seconds of a moment known to the minute are noughts.
 */
export function dateTime(moment: Moment): string {
  const local = wallClock(moment)
  const day = local.toPlainDate().toString()
  switch (moment.precision) {
    case 'year':
      return day.slice(0, 4)
    case 'month':
      return day.slice(0, 7)
    case 'day':
      return day
    case 'minute':
    case 'second':
      return `${day}T${local.toPlainTime().toString({ smallestUnit: 'second' })}${local.offset}`
  }
}

/** A birth date has no time of day. */
export function dateOnly(moment: Moment): string {
  return dateTime(moment).slice(0, 10)
}

export function period(from: Moment | null, until: Moment | null): Period | undefined {
  if (from === null && until === null) return undefined
  return { start: from === null ? undefined : dateTime(from), end: until === null ? undefined : dateTime(until) }
}
