import { type ReasonGroup, reasonGroups } from '#core/animal/main-reason.ts'
import { countOwn, type OwnCount, type OwnQuestion } from './count-own.ts'
import type { OperatedEar } from './operated-ear.ts'
import { type OwnCountingRules, type OwnOutcome, ownOutcomes } from './own-outcome.ts'

/** The ears of one operation in one species that were operated for one reason, with every outcome counted. */
export type ReasonCounts = Pick<OwnQuestion, 'species' | 'procedure'> & {
  readonly reason: ReasonGroup
  readonly ears: number
  readonly counts: readonly OwnCount[]
}

/**
 * Counts by the main reason of the operation, each reason by itself. Ears only: the two ears of an animal, and both ears
 * under one anaesthetic, may have been operated for different reasons.
 *
 * @example countsByReason({ species: 'dog', procedure: 'teca-lbo' }, ears, today, rules)[0]?.reason // 'chronic-otitis'
 */
export function countsByReason(
  of: Pick<OwnQuestion, 'species' | 'procedure'>,
  ears: readonly OperatedEar[],
  today: string,
  rules: OwnCountingRules,
  outcomes: readonly OwnOutcome[] = ownOutcomes,
): ReasonCounts[] {
  return reasonGroups.flatMap((reason) => {
    const some = ears.filter(
      (ear) => ear.reason === reason && ear.species === of.species && ear.procedure === of.procedure,
    )
    if (some.length === 0) return []
    const counts = outcomes.map((outcome) => countOwn({ ...of, outcome, unit: 'ear' }, some, today, rules))
    return [{ ...of, reason, ears: some.length, counts }]
  })
}
