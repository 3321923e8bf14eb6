import type { LifeTable } from './life-table.ts'
import { type Limits, noLimits, twoSided } from './survival-limits.ts'

/** The share that has had the event, and the share that ended otherwise first, after each line of the life table. */
export type IncidenceCurve = {
  readonly table: LifeTable
  readonly event: Float64Array
  readonly competing: Float64Array
  /** Standard errors by the delta method. */
  readonly eventError: Float64Array
  readonly competingError: Float64Array
}

/**
 * The share with the event where another end, as death, can come first (Aalen & Johansen, Scand J Stat 1978;5:141–150).
 * The variance is that of the delta method, which equals the infinitesimal jackknife. Together with the share of those
 * without any end the two shares make one.
 *
 * @example cumulativeIncidence(table).event.at(-1)
 * Reference of the variance: Putter, Fiocco & Geskus, Stat Med 2007;26:2389–2430 (remembered).
 */
export function cumulativeIncidence(table: LifeTable): IncidenceCurve {
  const event = incidenceOf(table, table.events)
  const competing = incidenceOf(table, table.competing)
  return {
    table,
    event: event.share,
    competing: competing.share,
    eventError: event.error,
    competingError: competing.error,
  }
}

function incidenceOf(table: LifeTable, cause: Float64Array): { share: Float64Array; error: Float64Array } {
  const lines = table.time.length
  const share = new Float64Array(lines)
  const error = new Float64Array(lines)
  let free = 1
  let now = 0
  // Sums of the three parts of the variance, so that each line needs only the newest share.
  let ends = 0
  let endsByShare = 0
  let endsBySquare = 0
  let own = 0
  let shared = 0
  let sharedByShare = 0
  for (let i = 0; i < lines; i += 1) {
    const risk = table.atRisk[i] ?? 1
    const any = (table.events[i] ?? 0) + (table.competing[i] ?? 0)
    const of = cause[i] ?? 0
    now += (free * of) / risk
    if (any > 0 && risk > any) {
      const part = any / (risk * (risk - any))
      ends += part
      endsByShare += part * now
      endsBySquare += part * now * now
    }
    own += (free * free * (risk - of) * of) / risk ** 3
    shared += (free * of) / (risk * risk)
    sharedByShare += (free * of * now) / (risk * risk)
    free *= 1 - any / risk
    share[i] = now
    const variance = now * now * ends - 2 * now * endsByShare + endsBySquare + own - 2 * (now * shared - sharedByShare)
    error[i] = Math.sqrt(Math.max(0, variance))
  }
  return { share, error }
}

/**
 * Log-log limits of a share with the event; none while nobody has had it, nor once all have.
 *
 * @example incidenceLimits(0.31, 0.12) // { low: 0.11, high: 0.54 }
 */
export function incidenceLimits(share: number, error: number, confidence = 0.95): Limits {
  if (!(share > 0 && share < 1)) return noLimits
  const wide = (twoSided(confidence) * error) / (share * Math.log(share))
  return { low: share ** Math.exp(-wide), high: share ** Math.exp(wide) }
}
