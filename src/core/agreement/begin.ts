import type { ProcedureId } from '#core/animal/procedure.ts'
import { type Side, sides } from '#core/animal/species.ts'
import { chosenOperation } from '#core/chapters/ears.ts'
import type { Case } from '#core/journal/fold.ts'
import { operationsOf } from '#core/owed/operations.ts'
import type { Conversation } from './conversation.ts'

/**
 * Which operation is planned for which ear: the one that is booked and not done, else the one that was chosen.
 *
 * @example plannedEars(theCase) // { LEFT: 'teca-lbo' }
 */
export function plannedEars(theCase: Case): Readonly<Partial<Record<Side, ProcedureId>>> {
  const operations = operationsOf({ theCase })
  return Object.fromEntries(
    sides.flatMap((side) => {
      const booked = operations.findLast((one) => one.side === side && !one.done)
      if (booked) return [[side, booked.procedure]]
      const done = operations.some((one) => one.side === side && one.done)
      const chosen = chosenOperation(theCase, side)
      return chosen === null || done ? [] : [[side, chosen as ProcedureId]]
    }),
  )
}

/**
 * The talk before anybody answered: only what the record already says stands in it, never an answer of the owner.
 *
 * @example beginConversation(theCase, 'person-holm').authority // null
 */
export function beginConversation(theCase: Case, me: string): Conversation {
  const booked = operationsOf({ theCase }).findLast(({ done }) => !done)
  const planned = plannedEars(theCase)
  return {
    ears: sides.filter((side) => planned[side] !== undefined),
    surgeon: booked?.surgeon ?? null,
    explainedBy: me,
    consentBy: null,
    authority: null,
    authorised: { by: null, how: null, when: '', until: '', upTo: '', witness: null },
    soundMind: null,
    resuscitate: null,
    mayExtend: null,
    extension: '',
    photographs: null,
    taught: {},
    given: null,
    witness: null,
    strokes: [],
    name: '',
    copy: null,
  }
}
