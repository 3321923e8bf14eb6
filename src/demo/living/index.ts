import type { Chart } from '../chart.ts'
import { barley } from './barley.ts'
import { Days } from './days.ts'
import { juniper } from './juniper.ts'
import { rowan } from './rowan.ts'
import { sorrel } from './sorrel.ts'
import { teasel } from './teasel.ts'

/** Cases in the middle of their course, by name of the animal. */
const livingCases = [barley, juniper, rowan, sorrel, teasel] as const

/**
 * The living cases as they stand on the day the practice is opened. Pure: the same day gives the same bytes; nothing
 * they tell has happened on that day or after it, only bookings and visits lie ahead.
 *
 * @example liveCharts('2026-03-10').map(({ stream }) => stream) // ['case:barley', 'case:juniper', …]
 */
export function liveCharts(today: string): Chart[] {
  const days = new Days(today)
  return livingCases.map((write) => write(days))
}
