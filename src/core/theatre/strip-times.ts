/** Steps of a time axis that a person reads without counting, in minutes. */
const steps = [5, 10, 15, 30, 60, 120, 240, 480] as const

const minute = 60_000

/**
 * Where the clock times of an axis stand: full steps of the hour, no nearer to each other than asked.
 *
 * @example axisTimes('2026-01-10T13:04:00.000Z', '2026-01-10T14:31:00.000Z', 4)[0] // '2026-01-10T13:30:00.000Z'
 */
export function axisTimes(from: string, until: string, most: number): string[] {
  const [start, end] = [Date.parse(from), Date.parse(until)]
  const step = (steps.find((one) => (end - start) / (one * minute) <= most) ?? steps[steps.length - 1] ?? 480) * minute
  const times: string[] = []
  for (let at = Math.ceil(start / step) * step; at <= end; at += step) times.push(new Date(at).toISOString())
  return times
}

/** A stretch of time on a line of that many pixels. */
export type Scale = { readonly from: string; readonly until: string; readonly left: number; readonly width: number }

/** Where an instant stands on the line. */
export function placeOf(at: string, { from, until, left, width }: Scale): number {
  const whole = Date.parse(until) - Date.parse(from)
  return left + (whole === 0 ? 0.5 : (Date.parse(at) - Date.parse(from)) / whole) * width
}
