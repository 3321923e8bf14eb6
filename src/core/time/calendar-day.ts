import { Temporal } from 'temporal-polyfill'
import { fill } from '../outcome/finding.ts'
import { type DateWords, datesInEnglish } from './date-words.ts'
import { instantText, type Moment, sayMoment, wallClock } from './moment.ts'

/** A length of time as the trade says it. Minutes and hours are real time; days, weeks and months are counted on the calendar. */
export type Period = { readonly count: number; readonly unit: 'minutes' | 'hours' | 'days' | 'weeks' | 'months' }
/** From one period after something until another. */
export type Span = { readonly from: Period; readonly until: Period }

/** The calendar day of a moment in its own zone: `2026-03-01`. */
export function dayOf(moment: { readonly at: string; readonly zone: string }): string {
  return wallClock(moment).toPlainDate().toString()
}

/**
 * The last day that a moment may mean: of a month or a year alone its last one.
 *
 * @example lastDayOf(march2026) // '2026-03-31'
 */
export function lastDayOf(moment: Pick<Moment, 'at' | 'zone' | 'precision'>): string {
  const day = wallClock(moment).toPlainDate()
  if (moment.precision === 'year') return day.with({ month: 12, day: 31 }).toString()
  return (moment.precision === 'month' ? day.with({ day: day.daysInMonth }) : day).toString()
}

/**
 * The day so many days, weeks or months later; a day the month lacks becomes its last one.
 *
 * @example dayAfter('2026-08-31', { count: 6, unit: 'months' }) // '2027-02-28'
 */
export function dayAfter(day: string, period: Period): string {
  if (period.unit === 'hours' || period.unit === 'minutes')
    throw new Error('Hours and minutes are counted from a moment, not from a day.')
  return Temporal.PlainDate.from(day)
    .add({ [period.unit]: period.count })
    .toString()
}

export function addDays(day: string, count: number): string {
  return Temporal.PlainDate.from(day).add({ days: count }).toString()
}

/** Whole days from one day to the other, below zero when the other is the earlier. Throws for a day that does not exist. */
export function daysBetween(earlier: string, later: string): number {
  return dayNumber(later) - dayNumber(earlier)
}

const dayLength = 86_400_000

/** Days since the first of 1970. Days are counted by the ten thousand, and a calendar object for each is most of the time. */
function dayNumber(day: string): number {
  if (/^\d{4}-\d{2}-\d{2}$/.test(day)) {
    const at = Date.parse(`${day}T00:00:00.000Z`)
    // A day that its month lacks would become one of the next month.
    if (!Number.isNaN(at) && new Date(at).toISOString().startsWith(day)) return at / dayLength
  }
  return Temporal.PlainDate.from(day).toZonedDateTime('UTC').epochMilliseconds / dayLength
}

/** 1 = Monday … 7 = Sunday. */
export function weekdayOf(day: string): number {
  return Temporal.PlainDate.from(day).dayOfWeek
}

/** The first instant of a day in a zone; not every day begins at 00:00 everywhere. */
export function startOfDay(day: string, zone: string): string {
  return instantText(Temporal.PlainDate.from(day).toZonedDateTime(zone).startOfDay().toInstant())
}

/** The last whole second of a day in a zone. */
export function endOfDay(day: string, zone: string): string {
  const next = Temporal.PlainDate.from(day).add({ days: 1 }).toZonedDateTime(zone).startOfDay()
  return instantText(next.toInstant().subtract({ seconds: 1 }))
}

/** The instant a period of real minutes or hours later, or the same wall-clock time so many days, weeks or months later. */
export function instantAfter(moment: { readonly at: string; readonly zone: string }, period: Period): string {
  const start = wallClock(moment)
  return instantText(start.add({ [period.unit]: period.count }).toInstant())
}

/**
 * A calendar day in words. Throws for a day that does not exist.
 *
 * @example sayCalendarDay('2026-02-12') // '12 February 2026'
 */
export function sayCalendarDay(day: string, words: DateWords = datesInEnglish): string {
  return sayMoment({ at: `${day}T00:00:00.000Z`, zone: 'UTC', precision: 'day', by: 'person' }, words)
}

/**
 * The same without its year, for a course of a few weeks: `12 February`. With its year where that is another one than
 * the year of `beside`, a day that whoever reads it knows.
 *
 * @example sayDayOfYear('2027-02-12', datesInEnglish, '2026-11-30') // '12 February 2027'
 */
export function sayDayOfYear(day: string, words: DateWords = datesInEnglish, beside: string = day): string {
  if (day.slice(0, 4) !== beside.slice(0, 4)) return sayCalendarDay(day, words)
  const { month, day: number } = Temporal.PlainDate.from(day)
  return fill(words.dayOfYear, { day: String(number), month: words.months[month - 1] ?? '' })
}

/** The same for a day as somebody once stored it: one that does not exist stands as it was written. */
export function sayStoredDay(day: string, words: DateWords = datesInEnglish): string {
  const at = `${day}T00:00:00.000Z`
  const there = !Number.isNaN(Date.parse(at)) && new Date(at).toISOString().startsWith(day)
  return there ? sayCalendarDay(day, words) : day
}
