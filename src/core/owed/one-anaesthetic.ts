import type { Case } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import type { OperationOnFile } from './operations.ts'

/** Both ears under one anaesthetic: which comes first and which second. */
export type OneAnaesthetic = { readonly first: OperationOnFile; readonly second: OperationOnFile }

/** Operations on both ears that lie closer together are one session: nobody wakes an animal to put it to sleep again. */
const closest = 12 * 60 * 60 * 1_000

/**
 * The pair an operation belongs to when both ears are operated under one anaesthetic: booked or done within half a day
 * of each other, and not each with an anaesthetic of its own by the stamps. Null for one ear alone.
 *
 * @example oneAnaesthetic(operation, operationsOf(file), theCase)?.second.side // 'RIGHT'
 */
export function oneAnaesthetic(
  operation: OperationOnFile,
  operations: readonly OperationOnFile[],
  theCase: Case,
): OneAnaesthetic | null {
  const from = (other: OperationOnFile) => Math.abs(Date.parse(other.moment.at) - Date.parse(operation.moment.at))
  const [nearest] = operations
    .filter((other) => other.side !== operation.side && from(other) <= closest)
    .sort((a, b) => from(a) - from(b))
  if (!nearest) return null
  // What was cut comes before what is only planned, whatever the list said.
  const [first, second] = [operation, nearest].sort(
    (a, b) =>
      Number(b.done !== null) - Number(a.done !== null) ||
      Date.parse(a.moment.at) - Date.parse(b.moment.at) ||
      (a.id < b.id ? -1 : 1),
  ) as [OperationOnFile, OperationOnFile]
  return beganAnew(first, second, theCase) ? null : { first, second }
}

/** The second was put to sleep by a stamp of its own after the tube of the first was out. */
function beganAnew(first: OperationOnFile, second: OperationOnFile, theCase: Case): boolean {
  const at = (operation: string, checkpoint: string) =>
    linesAbout(theCase, 'theatre-stamp', operation).find(
      ({ body }) => body.checkpoint === checkpoint && body.answer === 'done',
    )?.at
  const out = at(first.id, 'tube-out')
  const again = at(second.id, 'anaesthesia-start')
  return out !== undefined && again !== undefined && again > out
}

/**
 * The operations whose anaesthetic an operation is part of, first to last: itself alone, or both ears.
 *
 * @example anaestheticOf(operation, operations, theCase) // ['operation-left', 'operation-right']
 */
export function anaestheticOf(
  operation: OperationOnFile,
  operations: readonly OperationOnFile[],
  theCase: Case,
): readonly string[] {
  const pair = oneAnaesthetic(operation, operations, theCase)
  return pair ? [pair.first.id, pair.second.id] : [operation.id]
}
