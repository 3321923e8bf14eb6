import type { Case } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { type LossSpan, totalLoss } from './blood-loss.ts'
import type { SwabFacts } from './blood-swabs.ts'
import { lossOf } from './loss-of-entry.ts'

export type LossSoFar = {
  /** Undefined while nobody wrote a loss that can be right. */
  readonly sum: LossSpan | undefined
  /** Entries whose figures cannot be right together: they are not in the sum, so it may be more. */
  readonly refused: number
}

/**
 * All blood lost in one anaesthetic, one ear or both, of the entries whose figures can be right.
 *
 * @example lossSoFar(theCase, anaestheticOf(operation, operations, theCase), bloodInSwabs).sum?.atLeast // 20 mL
 */
export function lossSoFar(theCase: Case, operations: readonly string[], facts: SwabFacts): LossSoFar {
  const judged = operations
    .flatMap((operation) => linesAbout(theCase, 'blood-loss', operation))
    .map(({ body }) => lossOf(body, facts))
  const spans = judged.flatMap((one) => (one.kind === 'answer' ? [one.answer] : []))
  return { sum: totalLoss(spans), refused: judged.length - spans.length }
}
