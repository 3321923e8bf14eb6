import { dueDays } from '../evidence/own/count-own.ts'
import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import type { OwnCountingRules } from '../evidence/own/own-outcome.ts'
import { compareText } from '../journal/compare-text.ts'
import { addDays } from '../time/calendar-day.ts'

export type ToCall = {
  readonly stream: string
  readonly side: OperatedEar['side']
  readonly on: string
  /** The last day on which somebody knew how it was; null: nobody ever said. */
  readonly heard: string | null
}

/**
 * The ears of which nobody knows after a year how they ended, though they are due: those that were never heard of first,
 * then the longest silence. Where the animal has died nobody is called.
 *
 * @example whomToCall(earsOfYear(ears, 2025), '2026-11-30', rules)[0]?.heard // null
 */
export function whomToCall(ears: readonly OperatedEar[], today: string, rules: OwnCountingRules): ToCall[] {
  const due = addDays(today, -dueDays('resolution_or_improved', rules))
  return ears
    .filter(({ known, died, on }) => known.resolution_or_improved === null && died === null && on <= due)
    .map(({ stream, side, on, followedUntil }) => ({ stream, side, on, heard: followedUntil }))
    .sort(
      (a, b) => compareText(a.heard ?? '', b.heard ?? '') || compareText(a.on, b.on) || compareText(a.stream, b.stream),
    )
}
