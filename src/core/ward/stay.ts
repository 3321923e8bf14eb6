import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { doneAt } from '#core/theatre/stamps.ts'

/** The time between an operation and going home: one animal, with every ear that was operated in it. */
export type Stay = {
  /** Oldest first; never empty. */
  readonly operations: readonly OperationOnFile[]
  /** When the last of them ended: the tube came out, or the wound was closed. */
  readonly since: string
  readonly ended: { readonly at: string; readonly by: string } | null
}

/**
 * The last stay of an animal in the ward; null while it was never operated, or lies in theatre still: an operation
 * without an end on record has not reached the ward. It ends with the discharge, or with what can only come from home.
 *
 * @example stayOf(theCase, operationsOf(file))?.since // '2026-02-10T11:20:00.000Z'
 */
export function stayOf(theCase: Case, operations: readonly OperationOnFile[]): Stay | null {
  const over = operations.flatMap((operation) => {
    const at = operation.done ? endOf(theCase, operation) : null
    return at === null ? [] : [{ operation, at }]
  })
  const last = over.at(-1)
  if (!last) return null
  const homes = homeSigns(theCase)
  const before = homes.filter(({ at }) => at < last.operation.moment.at).at(-1)?.at ?? ''
  return {
    operations: over.filter(({ operation }) => operation.moment.at > before).map(({ operation }) => operation),
    since: last.at,
    ended: homes.find(({ at }) => at >= last.operation.moment.at) ?? null,
  }
}

/** The end of an operation as stamped or summed up; else the first round in the ward. */
function endOf(theCase: Case, operation: OperationOnFile): string | null {
  const summary = linesAbout(theCase, 'operation-summary', operation.id).at(-1)
  const stamped = doneAt(theCase, operation.id, 'tube-out') ?? doneAt(theCase, operation.id, 'closed')
  const round = theCase.live('ward-score').find(({ at }) => at > operation.moment.at)
  return stamped ?? summary?.body.closedAt.at ?? round?.at ?? null
}

/** What says that the animal is at home, oldest first. */
function homeSigns(theCase: Case): { readonly at: string; readonly by: string }[] {
  const sign = ({ at, header }: Pick<Line, 'at' | 'header'>) => ({ at, by: header.id })
  const seenAtHome = ({ body }: Line<BodyOf<'check'>>) => body.seenBy !== 'us'
  return [
    ...theCase.live('discharge').map(sign),
    ...theCase.live('check').filter(seenAtHome).map(sign),
    ...theCase.live('twelve-months').map(sign),
    ...theCase.live('owner-answer').map(sign),
    ...theCase
      .live('call')
      .filter(({ body }) => body.about === 'first-call' && body.reached === 'yes')
      .map(sign),
  ].sort((a, b) => (a.at < b.at ? -1 : 1))
}
