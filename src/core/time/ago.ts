import { Temporal } from 'temporal-polyfill'
import { wallClock } from './moment.ts'

/** How long ago, in the largest unit that says it fairly: 13 days, 5 weeks, 4 months, 2 years. */
export type Ago = { readonly count: number; readonly unit: 'days' | 'weeks' | 'months' | 'years' }

/**
 * How long ago a moment was on the calendar of its own zone; nought days for today and for a moment to come.
 *
 * @example agoOf({ at: '2026-01-05T09:00:00.000Z', zone: 'Europe/London' }, '2026-03-10T09:00:00.000Z') // 9 weeks
 */
export function agoOf(moment: { readonly at: string; readonly zone: string }, now: string): Ago {
  const then = wallClock(moment).toPlainDate()
  const today = wallClock({ at: now, zone: moment.zone }).toPlainDate()
  if (Temporal.PlainDate.compare(then, today) >= 0) return { count: 0, unit: 'days' }
  const days = then.until(today, { largestUnit: 'days' }).days
  const months = then.until(today, { largestUnit: 'months' }).months
  if (days < 14) return { count: days, unit: 'days' }
  if (months < 3) return { count: Math.floor(days / 7), unit: 'weeks' }
  return months < 24 ? { count: months, unit: 'months' } : { count: Math.floor(months / 12), unit: 'years' }
}
