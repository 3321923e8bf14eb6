import type { FormRefusalCode } from '#core/forms/refusal.ts'
import { addDays, dayOf } from '#core/time/calendar-day.ts'
import { type Moment, readMoment } from '#core/time/moment.ts'

export type ClockFault = {
  readonly because: FormRefusalCode | 'in-the-future'
  readonly about: Readonly<Record<string, string>>
}
export type ClockRead = { readonly moment: Moment } | ClockFault

/** The sheet that is typed in: its day, the clock time it begins with, and when it is typed in. */
export type Sheet = {
  readonly day: string
  readonly begins: string | null
  readonly zone: string
  readonly now: string
}

/** A time so much earlier than the first on the sheet belongs to the day after: the operation went over midnight. */
const hoursBack = 6

/**
 * The moment of a clock time on a sheet of paper: `9:05`, `0905` or `09.05`, and `01:30+01:00` in the night in which the
 * clocks go back. Never a moment that has not been yet.
 *
 * @example clockOnSheet('00:40', { day: '2026-03-10', begins: '22:15', zone, now }) // 11 March, 00:40
 */
export function clockOnSheet(text: string, { day, begins, zone, now }: Sheet): ClockRead {
  const given = text.trim()
  const clock = clockOf(given)
  if (clock === null) return { because: 'not-a-time', about: { given } }
  const first = begins === null ? null : clockOf(begins.trim())
  const isNextDay = first !== null && first.minutes - clock.minutes > hoursBack * 60
  const read = readMoment(`${isNextDay ? addDays(day, 1) : day}T${clock.said}`, zone)
  if ('because' in read) {
    const readings = 'readings' in read ? read.readings.map((one) => one.slice(11, 16) + one.slice(-6)).join(', ') : ''
    const because =
      read.because === 'local-time-twice' || read.because === 'no-such-local-time' ? read.because : 'not-a-time'
    return { because, about: { given, readings } }
  }
  return read.at > now ? { because: 'in-the-future', about: { given, day: dayOf(read) } } : { moment: read }
}

function clockOf(text: string): { readonly said: string; readonly minutes: number } | null {
  const [, hour = '', minute = '', offset = ''] = /^(\d{1,2})[:.]?(\d{2})\s*([+-]\d{2}:\d{2})?$/.exec(text) ?? []
  if (hour === '' || Number(hour) > 23 || Number(minute) > 59) return null
  return { said: `${hour.padStart(2, '0')}:${minute}${offset}`, minutes: Number(hour) * 60 + Number(minute) }
}
