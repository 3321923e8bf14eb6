import type { Sourced } from '#core/evidence/sourced.ts'
import type { Case } from '#core/journal/fold.ts'
import { instantAfter, type Period } from '#core/time/calendar-day.ts'
import type { Given } from './ledger.ts'

const localUses = new Set(['local_block', 'wound_infusion'])

/** A local anaesthetic that was given, and until when it may still hold the face. */
export type ActingBlock = {
  readonly given: Given
  readonly lasts: Sourced<Period> | null
  /** Null where no duration of this drug is on record. */
  readonly wornOff: string | null
}

/**
 * Every local anaesthetic that was put at the nerves or wound of these operations, or at the animal's, oldest first, with how
 * long the content says that it may act.
 *
 * @example blocksOf(theCase, [operation.id], owedRules.blockLasts, zone)[0]?.wornOff // eight hours after bupivacaine
 */
export function blocksOf(
  theCase: Case,
  operations: readonly string[],
  lasts: Readonly<Record<string, Sourced<Period>>>,
  zone: string,
): ActingBlock[] {
  return theCase
    .live('drug-given')
    .filter(({ header: { subject }, body }) => {
      const sameOperation = subject.kind !== 'operation' || operations.includes(subject.operation)
      return sameOperation && localUses.has(body.use)
    })
    .map((given) => {
      const rule = lasts[given.body.drug] ?? null
      return { given, lasts: rule, wornOff: rule ? instantAfter({ at: given.at, zone }, rule.value) : null }
    })
}
