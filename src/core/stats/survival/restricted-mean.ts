import { answer, type Outcome, refuse } from '../../outcome/outcome.ts'
import type { SurvivalCurve } from './kaplan-meier.ts'

export type BeyondFollowUp = { readonly because: 'beyond-follow-up'; readonly lastTime: number }

/**
 * The mean time without the event up to a horizon: the area under the curve, with its standard error. A horizon after the
 * last time on record is refused while the curve is above nought: nothing is known there.
 *
 * @example restrictedMean(curve, 365)
 * Reference: Klein & Moeschberger, Survival Analysis, 2nd ed. 2003, section 4.5 (remembered).
 */
export function restrictedMean(
  { table, survival }: SurvivalCurve,
  horizon: number,
): Outcome<{ readonly mean: number; readonly error: number }, BeyondFollowUp> {
  const lines = table.time.length
  const lastTime = table.time[lines - 1] ?? 0
  if (horizon > lastTime && (survival[lines - 1] ?? 1) > 0) return refuse({ because: 'beyond-follow-up', lastTime })
  let used = 0
  while (used < lines && (table.time[used] ?? Infinity) <= horizon) used += 1
  let after = 0
  let variance = 0
  // From the end back: the area from each event to the horizon is wanted for its variance.
  for (let i = used - 1; i >= 0; i -= 1) {
    const until = i + 1 < used ? (table.time[i + 1] ?? horizon) : horizon
    after += (survival[i] ?? 0) * (until - (table.time[i] ?? 0))
    const risk = table.atRisk[i] ?? 0
    const events = table.events[i] ?? 0
    if (events > 0 && risk > events) variance += (after * after * events) / (risk * (risk - events))
  }
  const before = used > 0 ? (table.time[0] ?? 0) : horizon
  return answer({ mean: before + after, error: Math.sqrt(variance) })
}
