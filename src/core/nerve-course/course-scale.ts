import { addDays, dayAfter, daysBetween } from '#core/time/calendar-day.ts'

/** Where the time since an operation stands on a line: early days wide, later months ever narrower. */
export type CourseScale = {
  readonly from: string
  readonly until: string
  readonly left: number
  readonly width: number
}

/** Hours over which the line is nearly even; beyond them it narrows. */
const even = 18

/**
 * The place of an instant in pixels.
 *
 * @example placeAt('2026-03-05T09:00:00.000Z', scale) // 212.4
 */
export function placeAt(at: string, { from, until, left, width }: CourseScale): number {
  const hours = (end: string) => Math.max(0, Date.parse(end) - Date.parse(from)) / 3_600_000
  const along = (end: string) => Math.log1p(hours(end) / even)
  return left + width * Math.min(1, along(at) / along(until))
}

const ticks = [
  { unit: 'days', count: 1 },
  { unit: 'days', count: 3 },
  { unit: 'weeks', count: 1 },
  { unit: 'weeks', count: 2 },
  { unit: 'weeks', count: 4 },
  { unit: 'months', count: 3 },
  { unit: 'months', count: 6 },
  { unit: 'months', count: 12 },
  { unit: 'months', count: 24 },
  { unit: 'months', count: 48 },
  { unit: 'months', count: 96 },
] as const
export type CourseTick = (typeof ticks)[number] & { readonly at: string }

/** Days and months of the axis that lie on it; the drawing leaves out those whose words would touch. */
export function ticksOf({ from, until }: Pick<CourseScale, 'from' | 'until'>): CourseTick[] {
  const day = from.slice(0, 10)
  const last = until.slice(0, 10)
  return ticks.flatMap((tick) => {
    const on = dayAfter(day, tick)
    return on > last ? [] : [{ ...tick, at: `${on}${from.slice(10)}` }]
  })
}

/** The axis reaches to the last thing that is known, and never less than two weeks. */
export function axisEnd(from: string, ends: readonly string[]): string {
  const least = `${addDays(from.slice(0, 10), 14)}${from.slice(10)}`
  return [...ends, least].sort().at(-1) ?? least
}

/** Whether nobody looked for longer than so many months between two days. */
export function isGap(from: string, until: string, months: number): boolean {
  const [a, b] = [from.slice(0, 10), until.slice(0, 10)]
  return daysBetween(dayAfter(a, { count: months, unit: 'months' }), b) > 0
}
