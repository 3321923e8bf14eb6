import type { LifeTable } from './life-table.ts'

/** The share without the event after each line of the life table. */
export type SurvivalCurve = {
  readonly table: LifeTable
  readonly survival: Float64Array
  /** Greenwood’s variance of the logarithm of the share; endless once nobody is left. */
  readonly logVariance: Float64Array
}

/**
 * The product-limit estimate (Kaplan & Meier, J Am Stat Assoc 1958;53:457–481) with the variance of its logarithm by
 * Greenwood. Other ends count as leaving: where death competes, read `cumulativeIncidence` and not one minus this.
 *
 * @example kaplanMeier(table).survival.at(-1)
 */
export function kaplanMeier(table: LifeTable): SurvivalCurve {
  const lines = table.time.length
  const survival = new Float64Array(lines)
  const logVariance = new Float64Array(lines)
  let share = 1
  let variance = 0
  for (let i = 0; i < lines; i += 1) {
    const risk = table.atRisk[i] ?? 0
    const events = table.events[i] ?? 0
    if (events > 0) {
      share *= 1 - events / risk
      variance += events / (risk * (risk - events))
    }
    survival[i] = share
    logVariance[i] = variance
  }
  return { table, survival, logVariance }
}

/**
 * The cumulative hazard (Nelson 1969; Aalen, Ann Stat 1978;6:701–726) and its variance by the sum of d/r².
 *
 * @example nelsonAalen(table).hazard.at(-1)
 */
export function nelsonAalen({ time, atRisk, events }: LifeTable): {
  readonly hazard: Float64Array
  readonly variance: Float64Array
} {
  const hazard = new Float64Array(time.length)
  const variance = new Float64Array(time.length)
  let sum = 0
  let squares = 0
  for (let i = 0; i < time.length; i += 1) {
    const risk = atRisk[i] ?? 1
    const now = events[i] ?? 0
    sum += now / risk
    squares += now / (risk * risk)
    hazard[i] = sum
    variance[i] = squares
  }
  return { hazard, variance }
}
