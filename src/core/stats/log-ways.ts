import { logBeta } from './incomplete-beta.ts'
import type { Count } from './proportion-interval.ts'

/**
 * ln of the number of ways in which so many events can fall among so many cases.
 *
 * @example logWays({ events: 2, total: 4 }) // ln 6
 */
export function logWays({ events, total }: Count): number {
  return -Math.log(total + 1) - logBeta(events + 1, total - events + 1)
}
