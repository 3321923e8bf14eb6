import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import { kaplanMeier } from '../stats/survival/kaplan-meier.ts'
import { endTimesOf, type Followed, lifeTable } from '../stats/survival/life-table.ts'
import { survivalQuantile, type TimeQuantile } from '../stats/survival/survival-quantile.ts'
import { daysBetween } from '../time/calendar-day.ts'

/** How the blink came back in the ears where it was weaker than before; null where there is none. */
export type BlinkRecovery = {
  readonly ears: number
  readonly back: number
  /** The day after the operation by which half were back. */
  readonly half: TimeQuantile
}

/**
 * Time from the operation to the first look with a blink as before it. Death and the last look end the watching: what is
 * asked is how a nerve heals while it is watched.
 *
 * @example blinkRecovery(ears)?.half.value // 14
 */
export function blinkRecovery(ears: readonly OperatedEar[]): BlinkRecovery | null {
  const rows = ears.flatMap(({ on, blink }): Followed[] => {
    if (!blink) return []
    const day = blink.backOn ?? blink.lastLookOn
    return [{ time: Math.max(0, daysBetween(on, day)), status: blink.backOn === null ? 0 : 1 }]
  })
  const table = lifeTable(endTimesOf(rows))
  if (table.kind === 'refusal') return null
  return {
    ears: rows.length,
    back: rows.filter(({ status }) => status === 1).length,
    half: survivalQuantile(kaplanMeier(table.answer), 0.5, 'log-log'),
  }
}
