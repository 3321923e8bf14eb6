import type { Count } from './proportion-interval.ts'
import { logGamma } from './special-functions.ts'

/** ln of the number of ways in which so many events can fall among so many cases. */
export function logWays({ events, total }: Count): number {
  return logGamma(total + 1) - logGamma(events + 1) - logGamma(total - events + 1)
}
