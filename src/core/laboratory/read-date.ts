import { Unreadable } from './fault.ts'
import type { TableMapping } from './mapping.ts'
import type { Place } from './report.ts'

/**
 * A date of a table as `2026-03-01` or `2026-03-01T14:20`. A date that can be two days is refused until a person said
 * which of its numbers is the day; one that can be only one day is read.
 *
 * @example readDate('25/03/2026', null, place) // '2026-03-25'
 */
export function readDate(text: string, order: TableMapping['dates'], place: Place): string | null {
  const given = text.trim()
  if (given === '') return null
  // A birth is often known to the month or the year only.
  if (/^\d{4}(-(0[1-9]|1[0-2]))?$/.test(given)) return given
  const iso = /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}:\d{2})(?::\d{2}(?:\.\d+)?)?(Z|[+-]\d{2}:\d{2})?)?$/.exec(given)
  if (iso) return dated(iso[1], iso[2], iso[3], iso[4], iso[5], given, place)
  const match = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4})(?:[ ,T]+(\d{1,2}:\d{2})(?::\d{2})?)?$/.exec(given)
  if (!match) throw new Unreadable('date-unreadable', given, place)
  const [, one = '', other = '', year, time] = match
  const dayFirst = Number(other) <= 12
  const monthFirst = Number(one) <= 12
  const same = Number(one) === Number(other)
  if (dayFirst && monthFirst && !same && order === null) throw new Unreadable('date-two-readings', given, place)
  const byMonth = monthFirst && (!dayFirst || order === 'month-first')
  return dated(year, byMonth ? one : other, byMonth ? other : one, time?.padStart(5, '0'), undefined, given, place)
}

function dated(
  year: string | undefined,
  month = '',
  day = '',
  time: string | undefined,
  zone: string | undefined,
  given: string,
  place: Place,
): string {
  const [m, d, hour] = [Number(month), Number(day), Number(time?.slice(0, 2) ?? 0)]
  if (m < 1 || m > 12 || d < 1 || d > 31 || hour > 23) throw new Unreadable('date-unreadable', given, place)
  const date = `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`
  return time === undefined ? date : `${date}T${time}${zone === 'Z' ? '+00:00' : (zone ?? '')}`
}
