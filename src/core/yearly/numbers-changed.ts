import { countEvery, type OwnCount, type OwnQuestion } from '../evidence/own/count-own.ts'
import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import { type OwnCountingRules, ownOutcomes } from '../evidence/own/own-outcome.ts'
import { operationsIn } from './freeze-year.ts'

type Counted = Pick<OwnCount, 'events' | 'total' | 'lost' | 'notYetDue'>
export type NumberChanged = OwnQuestion & { readonly before: Counted; readonly after: Counted }

/**
 * Every count of a year that is another now than when it was frozen, by the rules and due on the day of then.
 *
 * @example numbersChanged(earsOfFrozen(frozen), earsOfYear(ears, 2025), frozen.lookedAt, rulesOfFrozen(frozen))
 */
export function numbersChanged(
  then: readonly OperatedEar[],
  now: readonly OperatedEar[],
  lookedAt: string,
  rules: OwnCountingRules,
): NumberChanged[] {
  return operationsIn([...then, ...now]).flatMap((of) =>
    changedOf(countEvery(of, ownOutcomes, then, lookedAt, rules), countEvery(of, ownOutcomes, now, lookedAt, rules)),
  )
}

/** Both lists have the same questions in the same order. */
function changedOf(then: readonly OwnCount[], now: readonly OwnCount[]): NumberChanged[] {
  return then.flatMap((old, place) => {
    const [before, after] = [counted(old), counted(now[place] ?? old)]
    const same = (Object.keys(before) as (keyof Counted)[]).every((name) => before[name] === after[name])
    return same ? [] : [{ ...old.question, before, after }]
  })
}

function counted({ events, total, lost, notYetDue }: OwnCount): Counted {
  return { events, total, lost, notYetDue }
}
