import { Temporal } from 'temporal-polyfill'
import { sayMoment } from '#core/time/moment.ts'
import { type Stretch, xOf } from './lane-scale.ts'

/** A word on the axis: a date with its month as a word, or a time of day. */
export type Tick = { readonly x: number; readonly label: string; readonly is: 'date' | 'time' }

/** How wide a letter of the axis is, and the least room between two labels. */
const letter = 6.5
const between = 8
const minute = 60_000
const steps = [15, 30, 60, 120, 180, 360].map((minutes) => minutes * minute)

/**
 * Dates where a stretch or a part after a gap begins, and times of day inside short parts, in a row of their own; never
 * two words of a row that touch. Every stretch is a scale of its own, so it begins with a date; the year is left out where it
 * does not fit.
 */
export function ticksOf(stretches: readonly Stretch[], zone: string): Tick[] {
  const ticks: Tick[] = []
  const free = { date: Number.NEGATIVE_INFINITY, time: Number.NEGATIVE_INFINITY }
  const put = (x: number, labels: readonly string[], is: Tick['is'], room: number): void => {
    const label = labels.find((one) => x + one.length * letter <= room)
    if (x < free[is] || label === undefined) return
    ticks.push({ x, label, is })
    free[is] = x + label.length * letter + between
  }
  for (const stretch of stretches) {
    const room = stretch.x + stretch.width
    let shown = dateAt(stretch.from, zone)
    put(stretch.knots[0]?.x ?? stretch.x, [shown, withoutYear(shown)], 'date', room)
    for (const part of partsOf(stretch)) {
      const day = dateAt(part.from, zone)
      const x = xOf(part.from, stretches)
      if (day !== shown) put(x, [withoutYear(day)], 'date', room)
      shown = day
      const wide = xOf(part.until, stretches) - x
      for (const time of timesIn(part, wide, zone)) put(xOf(time, stretches), [timeAt(time, zone)], 'time', room)
    }
  }
  return ticks
}

function withoutYear(date: string): string {
  return date.replace(/ \d{4}$/, '')
}

type Part = { readonly from: number; readonly until: number }

/** The parts of a stretch between its gaps. */
function partsOf({ from, until, gaps }: Stretch): Part[] {
  const starts = [from, ...gaps.map((gap) => gap.until)]
  return starts
    .map((start, at) => ({ from: start, until: gaps[at]?.from ?? until }))
    .filter((part) => part.until >= part.from)
}

/** Round times of day in a part of at most two days, as close as their words allow. */
function timesIn(part: Part, width: number, zone: string): number[] {
  const length = part.until - part.from
  if (length <= 0 || length > 48 * 60 * minute) return []
  const step = steps.find((one) => (width * one) / length >= 5 * letter + between)
  if (step === undefined) return []
  const midnight = local(part.from, zone).startOfDay().epochMilliseconds
  const first = Math.ceil((part.from - midnight) / step)
  const last = Math.floor((part.until - midnight) / step)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => midnight + (first + at) * step)
}

function local(time: number, zone: string): Temporal.ZonedDateTime {
  return Temporal.Instant.fromEpochMilliseconds(time).toZonedDateTimeISO(zone)
}

function dateAt(time: number, zone: string): string {
  return sayMoment({ at: new Date(time).toISOString(), zone, precision: 'day', by: 'clock' })
}

function timeAt(time: number, zone: string): string {
  return local(time, zone).toPlainTime().toString({ smallestUnit: 'minute' })
}
