import { Temporal } from 'temporal-polyfill'
import { fill } from '../outcome/finding.ts'
import { type DateWords, datesInEnglish } from './date-words.ts'

/** How finely a moment is known. "2019" is a legal answer and stays one. */
export type Precision = 'year' | 'month' | 'day' | 'minute' | 'second'
export const precisions = ['year', 'month', 'day', 'minute', 'second'] as const

/**
 * A moment as the journal keeps it: the instant in UTC (for a coarse moment: its first instant on the wall clock of
 * the zone), the IANA zone it was lived in, how finely it is known, and whether a clock or a person gave it.
 */
export type Moment = {
  readonly at: string
  readonly zone: string
  readonly precision: Precision
  readonly by: 'clock' | 'person'
}

export type MomentRefusal =
  | { readonly because: 'not-a-moment'; readonly given: string }
  | { readonly because: 'no-offset'; readonly given: string }
  | { readonly because: 'day-or-month-first'; readonly given: string; readonly readings: readonly string[] }
  | { readonly because: 'unknown-zone'; readonly given: string }
  | { readonly because: 'no-such-local-time'; readonly given: string; readonly zone: string }
  | {
      readonly because: 'local-time-twice'
      readonly given: string
      readonly zone: string
      readonly readings: readonly string[]
    }

const { months } = datesInEnglish

/** UTC text with milliseconds, the only form of an instant in the journal: `2026-03-01T08:00:00.000Z`. */
export function instantText(instant: Temporal.Instant): string {
  return instant.toString({ fractionalSecondDigits: 3 })
}

export function isZone(zone: string): boolean {
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone)
    return true
  } catch {
    return false
  }
}

/** The moment on the wall clock of its own zone. */
export function wallClock(moment: { readonly at: string; readonly zone: string }): Temporal.ZonedDateTime {
  return Temporal.Instant.from(moment.at).toZonedDateTimeISO(moment.zone)
}

/**
 * Reads what people and programs write: "2019", "March 2024", "2024-03-05", "5 March 2024", "5 March 2024, 14:20",
 * "2024-03-05T14:20+01:00", "2024-03-05 14:20". A local time that does not exist or exists twice in the zone is refused with its readings;
 * "05/03/2024" is refused because it can be two days.
 *
 * @example readMoment('March 2024', 'Europe/Lisbon') // precision 'month'
 */
export function readMoment(text: string, zone: string): Moment | MomentRefusal {
  const given = text.trim()
  if (!isZone(zone)) return { because: 'unknown-zone', given: zone }
  const coarse = (year: number, month: number, day: number, precision: Precision): Moment | MomentRefusal => {
    try {
      const date = Temporal.PlainDate.from({ year, month, day }, { overflow: 'reject' })
      return { at: instantText(date.toZonedDateTime(zone).startOfDay().toInstant()), zone, precision, by: 'person' }
    } catch {
      return { because: 'not-a-moment', given }
    }
  }
  const monthOf = (name: string) =>
    months.findIndex((m) => m.toLowerCase().startsWith(name.toLowerCase().slice(0, 3))) + 1
  let match = /^(\d{4})$/.exec(given)
  if (match) return coarse(Number(match[1]), 1, 1, 'year')
  match = /^(\d{4})-(\d{2})$/.exec(given)
  if (match) return coarse(Number(match[1]), Number(match[2]), 1, 'month')
  match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(given)
  if (match) return coarse(Number(match[1]), Number(match[2]), Number(match[3]), 'day')
  match = /^([A-Za-z]{3,9}) (\d{4})$/.exec(given)
  if (match && monthOf(match[1] ?? '') > 0) return coarse(Number(match[2]), monthOf(match[1] ?? ''), 1, 'month')
  match = /^(\d{1,2}) ([A-Za-z]{3,9}) (\d{4})$/.exec(given)
  if (match && monthOf(match[2] ?? '') > 0)
    return coarse(Number(match[3]), monthOf(match[2] ?? ''), Number(match[1]), 'day')
  match = /^(\d{1,2}) ([A-Za-z]{3,9}) (\d{4}),? (\d{2}:\d{2})$/.exec(given)
  if (match && monthOf(match[2] ?? '') > 0) {
    const iso = `${match[3]}-${String(monthOf(match[2] ?? '')).padStart(2, '0')}-${(match[1] ?? '').padStart(2, '0')}`
    const read = readMoment(`${iso} ${match[4]}`, zone)
    return 'because' in read ? { ...read, given } : read
  }
  match = /^(\d{1,2})[/.](\d{1,2})[/.](\d{4})$/.exec(given)
  if (match) {
    const [, a, b, year] = match
    const readings = [`${a} ${months[Number(b) - 1] ?? '?'} ${year}`, `${b} ${months[Number(a) - 1] ?? '?'} ${year}`]
    return { because: 'day-or-month-first', given, readings: readings.filter((reading) => !reading.includes('?')) }
  }
  match = /^(\d{4}-\d{2}-\d{2})[T ](\d{2}:\d{2})(:\d{2}(?:\.\d{1,3})?)?(Z|[+-]\d{2}:\d{2})?$/.exec(given)
  if (!match) return { because: 'not-a-moment', given }
  const precision: Precision = match[3] ? 'second' : 'minute'
  try {
    if (match[4]) {
      const instant = Temporal.Instant.from(`${match[1]}T${match[2]}${match[3] ?? ''}${match[4]}`)
      return { at: instantText(instant), zone, precision, by: 'person' }
    }
    return localMoment(Temporal.PlainDateTime.from(`${match[1]}T${match[2]}${match[3] ?? ''}`), zone, precision, given)
  } catch {
    return { because: 'not-a-moment', given }
  }
}

function localMoment(
  local: Temporal.PlainDateTime,
  zone: string,
  precision: Precision,
  given: string,
): Moment | MomentRefusal {
  const earlier = local.toZonedDateTime(zone, { disambiguation: 'earlier' })
  const later = local.toZonedDateTime(zone, { disambiguation: 'later' })
  if (earlier.toInstant().equals(later.toInstant())) {
    return { at: instantText(earlier.toInstant()), zone, precision, by: 'person' }
  }
  if (earlier.toPlainDateTime().equals(local)) {
    const readings = [earlier, later].map((reading) => `${local.toString()}${reading.offset}`)
    return { because: 'local-time-twice', given, zone, readings }
  }
  return { because: 'no-such-local-time', given, zone }
}

/**
 * "2019", "March 2024", "5 March 2024", "5 March 2024, 14:20"; month as a word, so that day and month cannot swap. A time
 * that the clocks show twice has its offset.
 *
 * @example sayMoment(moment, datesInSpanish) // '5 de marzo de 2024, 14:20'
 */
export function sayMoment(moment: Moment, words: DateWords = datesInEnglish): string {
  const local = wallClock(moment)
  const about = {
    year: String(local.year),
    month: words.months[local.month - 1] ?? '',
    day: String(local.day),
    time: clockToldApart(moment.at, moment.zone),
  }
  switch (moment.precision) {
    case 'year':
      return about.year
    case 'month':
      return fill(words.month, about)
    case 'day':
      return fill(words.day, about)
    case 'minute':
    case 'second':
      return fill(words.minute, about)
  }
}

/** The time of day in a zone. Example: `clockOf('2026-03-10T08:05:00Z', 'Europe/Paris')` → '09:05'. */
export function clockOf(at: string, zone: string): string {
  return wallClock({ at, zone }).toPlainTime().toString({ smallestUnit: 'minute' })
}

/**
 * The time of day in a zone; with its offset in the hour that the clocks show twice, as it has to be typed then.
 *
 * @example clockToldApart('2026-10-25T01:30:00Z', 'Europe/London') // '01:30+00:00'
 */
export function clockToldApart(at: string, zone: string): string {
  const shown = wallClock({ at, zone })
  const local = shown.toPlainDateTime()
  const clock = local.toPlainTime().toString({ smallestUnit: 'minute' })
  const earlier = local.toZonedDateTime(zone, { disambiguation: 'earlier' })
  const later = local.toZonedDateTime(zone, { disambiguation: 'later' })
  const twice = !earlier.toInstant().equals(later.toInstant())
  return twice ? `${clock}${shown.offset}` : clock
}

/** Real time passed, in minutes, whatever the wall clock did in between. */
export function minutesBetween(earlier: { readonly at: string }, later: { readonly at: string }): number {
  const from = Temporal.Instant.from(earlier.at)
  return from.until(Temporal.Instant.from(later.at)).total('minutes')
}

/** The moment `minutes` of real time later. */
export function afterMinutes(moment: Moment, minutes: number): Moment {
  return { ...moment, at: instantText(Temporal.Instant.from(moment.at).add({ seconds: Math.round(minutes * 60) })) }
}
