import type { Side } from '#core/animal/species.ts'
import { sidesOf } from '#core/chapters/sides.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import { isOfEar, type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import type { Procedure } from '#core/procedures/procedure.ts'
import type { Moment } from '#core/time/moment.ts'
import { type DraftFacts, type DraftFinding, draftFindings } from './draft-findings.ts'
import { type DraftPlan, draftPlan } from './draft-plan.ts'
import { toStamp } from './stamps.ts'

type Booking = BodyOf<'booking'>

/** What the entries of one operation say for its summary. Null or empty: no entry says it, or two say it differently. */
export type SummaryDraft = {
  readonly side: Side | null
  readonly procedure: Booking['procedure'] | null
  readonly surgeon: string | null
  readonly anaesthetist: string | null
  readonly incisionAt: Moment | null
  readonly closedAt: Moment | null
  readonly indication: string | null
  readonly findings: readonly DraftFinding[]
  readonly drain: boolean | null
  readonly plan: readonly DraftPlan[]
  /** Marks and checkpoints of which two stamps stand side by side: nothing is drafted from them. */
  readonly unsettled: readonly string[]
}

/**
 * The summary of an operation as far as its entries say it: booking, choice, stamps, specimens, doses. Nothing is
 * inferred, and complications stay with the surgeon.
 *
 * @example draftSummary(file, operation, procedure, facts).drain // true once the stamp says where the drain leaves
 */
export function draftSummary(
  file: Pick<CaseFile, 'theCase'>,
  operation: OperationOnFile,
  procedure: Procedure,
  facts: DraftFacts,
): SummaryDraft {
  const { theCase } = file
  const items = toStamp(theCase, operation.id, procedure.checkpoints)
  const booked = <Name extends keyof Booking>(name: Name) => agreed(linesAbout(theCase, 'booking', operation.id), name)
  const momentOf = (mark: string) => {
    const [stamp, other] = items.find(({ id }) => id === mark)?.stamps ?? []
    return stamp && !other && stamp.body.answer === 'done' ? { ...stamp.header.happenedAt, at: stamp.at } : null
  }
  const inDoubt = sidesOf(theCase).disagreements.some((one) => one.operation === operation.id)
  const pair = oneAnaesthetic(operation, operationsOf(file), theCase)
  return {
    side: inDoubt ? null : booked('side'),
    procedure: booked('procedure'),
    surgeon: booked('surgeon'),
    anaesthetist: booked('anaesthetist'),
    incisionAt: momentOf('incision'),
    closedAt: momentOf('closed'),
    indication: chosenBecause(theCase, operation),
    findings: draftFindings(theCase, operation, { items, pair, facts }),
    drain: drainOf(items),
    plan: draftPlan(theCase, operation, { items, facts }),
    unsettled: items.filter(({ stamps }) => stamps.length > 1).map(({ id }) => id),
  }
}

/** What every live booking says alike. */
function agreed<Name extends keyof Booking>(bookings: readonly Line<Booking>[], name: Name): Booking[Name] | null {
  const [first, ...others] = bookings.map(({ body }) => body[name])
  return first !== undefined && others.every((other) => other === first) ? first : null
}

/** Why this operation was chosen for this ear, in the words of the last choice before it. */
function chosenBecause(theCase: Case, { side, procedure, moment }: OperationOnFile): string | null {
  const choice = theCase.live('choice').findLast((line) => isOfEar(line, side) && line.at <= moment.at)
  const chosen = choice?.body.options.find(({ option, answer }) => option === procedure && answer === 'chosen')
  return chosen?.because ?? null
}

/** Only a coded answer says it: that a drain was thought about does not say that one was left. */
function drainOf(items: ReturnType<typeof toStamp>): boolean | null {
  const said = items.flatMap(({ checkpoint, stamps }) => {
    const [stamp, other] = stamps
    const asked = checkpoint?.details.find(({ id, kind }) => id === 'drain' && kind === 'coded')
    if (!stamp || other || asked?.kind !== 'coded' || stamp.body.answer !== 'done') return []
    const answer = stamp.body.detail[asked.id]
    return answer !== undefined && Object.hasOwn(asked.answers, answer) ? [answer !== 'none'] : []
  })
  return said.length === 1 ? (said[0] ?? null) : null
}
