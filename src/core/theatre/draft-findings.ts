import type { Side } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import type { OneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { stampSentences } from '#core/procedures/stamp-sentences.ts'
import type { LossSpan } from './blood-loss.ts'
import type { SwabFacts } from './blood-swabs.ts'
import { type EmergencyAccount, emergencyAccounts } from './emergency-account.ts'
import { lossSoFar } from './loss-so-far.ts'
import { type MarkWords, markName } from './mark-name.ts'
import { retractionsOf, type Stamp, type ToStamp } from './stamps.ts'

/** One statement for the findings, with the entry it was read from where it is one. */
export type DraftFinding =
  | { readonly kind: 'stamp'; readonly from: string; readonly sentences: readonly string[] }
  /** A stamp of no checkpoint of the procedure: its own words. */
  | { readonly kind: 'free-stamp'; readonly from: string; readonly stamp: Stamp }
  | { readonly kind: 'retraction'; readonly times: number; readonly minutes: number }
  | { readonly kind: 'emergency'; readonly from: string; readonly account: EmergencyAccount }
  | { readonly kind: 'loss'; readonly sum: LossSpan; readonly refused: number }
  | { readonly kind: 'count'; readonly from: string; readonly count: Line<BodyOf<'count'>> }
  | { readonly kind: 'both-ears'; readonly which: 'first' | 'second'; readonly other: Side }

/** What content knows and the draft needs. */
export type DraftFacts = {
  readonly swabs: SwabFacts
  readonly marks: MarkWords
  /** Answers at the facial nerve after which the eye is kept wet until it blinks. */
  readonly eyeAfterNerve: Sourced<{
    readonly checkpoint: string
    readonly answers: Readonly<Record<string, readonly string[]>>
  }>
}

type About = {
  readonly items: readonly ToStamp[]
  readonly pair: OneAnaesthetic | null
  readonly facts: DraftFacts
}

/**
 * The sentences of the stamps in the order of the operation, then what else was recorded of it. A checkpoint with two
 * stamps says nothing until a person has settled them.
 *
 * @example draftFindings(theCase, operation, about)[0] // { kind: 'stamp', from: '0190…', sentences: ['It lay free.'] }
 */
export function draftFindings(
  theCase: Case,
  operation: OperationOnFile,
  { items, pair, facts }: About,
): DraftFinding[] {
  const planned = new Set(items.map(({ id }) => id))
  const stamped = items.flatMap(({ checkpoint, stamps }): DraftFinding[] => {
    const [stamp, other] = stamps
    if (!checkpoint || !stamp || other) return []
    return [{ kind: 'stamp', from: stamp.header.id, sentences: stampSentences(checkpoint, stamp.body) }]
  })
  const free = linesAbout(theCase, 'theatre-stamp', operation.id)
    .filter(({ body }) => !planned.has(body.checkpoint) && markName(body.checkpoint, facts.marks) === undefined)
    .map((stamp): DraftFinding => ({ kind: 'free-stamp', from: stamp.header.id, stamp }))
  const accounts = emergencyAccounts(theCase, operation.id)
  const { sum, refused } = lossSoFar(theCase, [operation.id], facts.swabs)
  const finals = linesAbout(theCase, 'count', operation.id).filter(({ body }) => body.when === 'final')
  const [final] = finals
  return [
    ...stamped,
    ...free,
    ...retraction(theCase, operation.id),
    ...accounts.map((account): DraftFinding => ({ kind: 'emergency', from: account.shout.begun.header.id, account })),
    ...(sum ? [{ kind: 'loss', sum, refused } as const] : []),
    ...(final && finals.length === 1 ? [{ kind: 'count', from: final.header.id, count: final } as const] : []),
    ...bothEars(operation, pair),
  ]
}

/** Only when every time the nerve was held has an end: an open one has no length. */
function retraction(theCase: Case, operation: string): DraftFinding[] {
  const held = retractionsOf(theCase, operation)
  const ended = held.flatMap(({ from, until }) => (until === null ? [] : [Date.parse(until) - Date.parse(from)]))
  if (held.length === 0 || ended.length < held.length || ended.some((length) => length < 0)) return []
  const minutes = Math.round(ended.reduce((sum, length) => sum + length, 0) / 60_000)
  return [{ kind: 'retraction', times: held.length, minutes }]
}

/** Said only when both were cut: what was booked may not have been done. */
function bothEars(operation: OperationOnFile, pair: OneAnaesthetic | null): DraftFinding[] {
  if (!pair?.first.done || !pair.second.done) return []
  const isFirst = pair.first.id === operation.id
  const other = isFirst ? pair.second : pair.first
  return [{ kind: 'both-ears', which: isFirst ? 'first' : 'second', other: other.side }]
}
