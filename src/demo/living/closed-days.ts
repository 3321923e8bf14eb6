import { Temporal } from 'temporal-polyfill'
import { weekdayOf } from '#core/time/calendar-day.ts'
import type { ClosedDays } from '#core/time/open-days.ts'
import { closed } from '../practice.ts'

export type ClosedDay = { readonly day: string; readonly because: string }

/**
 * The days on which the invented practice is closed around a day: those it wrote down for 2025, and the bank holidays
 * of England from the year before until the year after the next, so that a year of visits still meets them.
 */
export function closedDaysAround(today: string): ClosedDay[] {
  const { year } = Temporal.PlainDate.from(today)
  const found = [year - 1, year, year + 1, year + 2].flatMap(bankHolidays)
  return found.filter(({ day }) => !closed.days.includes(day))
}

/** The same as the rules of open days read it. */
export function closedAround(today: string): ClosedDays {
  return { weekdays: closed.weekdays, days: [...closed.days, ...closedDaysAround(today).map(({ day }) => day)].sort() }
}

/**
 * The bank holidays of England and Wales by their standing rules; one that falls on a weekend moves to the next working
 * day. Days proclaimed for a single year are not known here.
 */
function bankHolidays(year: number): ClosedDay[] {
  const on = (month: number, day: number) => Temporal.PlainDate.from({ year, month, day })
  const easter = easterSunday(year)
  const newYear = offWeekend(on(1, 1))
  const christmas = offWeekend(on(12, 25))
  const afterChristmas = offWeekend(on(12, 26))
  const boxing = afterChristmas.equals(christmas) ? christmas.add({ days: 1 }) : afterChristmas
  return [
    { day: newYear, because: 'New Year’s Day' },
    { day: easter.subtract({ days: 2 }), because: 'Good Friday' },
    { day: easter.add({ days: 1 }), because: 'Easter Monday' },
    { day: mondayFrom(on(5, 1)), because: 'Bank holiday' },
    { day: mondayFrom(on(5, 25)), because: 'Bank holiday' },
    { day: mondayFrom(on(8, 25)), because: 'Bank holiday' },
    { day: christmas, because: 'Christmas Day' },
    { day: boxing, because: 'Boxing Day' },
  ].map(({ day, because }) => ({ day: day.toString(), because }))
}

function offWeekend(day: Temporal.PlainDate): Temporal.PlainDate {
  return weekdayOf(day.toString()) > 5 ? mondayFrom(day) : day
}

/** That day when it is a Monday, else the next one. */
function mondayFrom(day: Temporal.PlainDate): Temporal.PlainDate {
  return day.add({ days: (8 - day.dayOfWeek) % 7 })
}

/** The Gregorian reckoning in whole numbers. */
function easterSunday(year: number): Temporal.PlainDate {
  const golden = year % 19
  const century = Math.floor(year / 100)
  const inCentury = year % 100
  const moon = (century - Math.floor(century / 4) - Math.floor((8 * century + 13) / 25) + 19 * golden + 15) % 30
  const fullMoon = moon - Math.floor((golden + 11 * moon) / 319)
  const weekday = (2 * (century % 4) + 2 * Math.floor(inCentury / 4) - (inCentury % 4) - fullMoon + 32) % 7
  const month = Math.floor((fullMoon + weekday + 90) / 25)
  const day = (fullMoon + weekday + month + 19) % 32
  return Temporal.PlainDate.from({ year, month, day })
}
