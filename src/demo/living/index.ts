import type { Chart } from '../chart.ts'
import { barley } from './barley.ts'
import { Days } from './days.ts'
import { hazel } from './hazel.ts'
import { juniper } from './juniper.ts'
import { rowan } from './rowan.ts'
import { sorrel } from './sorrel.ts'
import { teasel } from './teasel.ts'

/** Cases in the middle of their course, by name of the animal. */
export const livingCases = [
  { name: 'barley', title: 'Barley, a spaniel: stitches to come out, results that nobody has read', write: barley },
  {
    name: 'hazel',
    title: 'Hazel, a pug: operated on the last open day, in the ward, and the night is over',
    write: hazel,
  },
  { name: 'juniper', title: 'Juniper, a dog: to be operated in two open days, and the sides disagree', write: juniper },
  { name: 'rowan', title: 'Rowan, a shepherd: a wet hole under the ear in the fifth month', write: rowan },
  { name: 'sorrel', title: 'Sorrel, a young cat: just home, and the lids do not close', write: sorrel },
  { name: 'teasel', title: 'Teasel, a flat-faced dog: an urgent call of the evening before', write: teasel },
] as const
export type LivingName = (typeof livingCases)[number]['name']

/**
 * The living cases as they stand on the day the practice is opened. Pure: the same day gives the same bytes; nothing
 * they tell has happened on that day or after it, only bookings and visits lie ahead.
 *
 * @example liveCharts('2026-03-10').map(({ stream }) => stream) // ['case:barley', 'case:juniper', …]
 */
export function liveCharts(today: string, only?: LivingName): Chart[] {
  const days = new Days(today)
  return livingCases.filter(({ name }) => only === undefined || name === only).map(({ write }) => write(days))
}
