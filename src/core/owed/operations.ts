import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Side } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Case, KindName, Line } from '#core/journal/fold.ts'
import { isAbout } from '#core/journal/lines-about.ts'
import type { Moment } from '#core/time/moment.ts'

/** An operation as the entries make it: booked, or done. */
export type OperationOnFile = {
  readonly id: string
  readonly side: Side
  readonly procedure: ProcedureId
  readonly surgeon: string
  readonly anaesthetist: string | null
  readonly booking: Line<BodyOf<'booking'>> | null
  /** When the skin was cut, and the entry that says so; null while it is only booked. */
  readonly done: { readonly moment: Moment; readonly by: string } | null
  /** The cut, or the plan for it. */
  readonly moment: Moment
  /** How often entries wrote down when this operation is or was. */
  readonly written: number
}

/** How many lines of a kind about one thing were ever written, with what withdrew them: a number that only rises. */
export function timesWritten(theCase: Case, kind: KindName, matches: (line: Line) => boolean): number {
  const lines = theCase.lines.filter((line) => line.header.kind === kind && matches(line))
  const ids = new Set(lines.map((line) => line.header.id))
  const withdrawals = theCase.lines.filter(({ header }) => header.withdraws !== null && ids.has(header.withdraws))
  return lines.length + withdrawals.length
}

/** Every operation of the case, oldest first. */
export function operationsOf(file: Pick<CaseFile, 'theCase'>): OperationOnFile[] {
  const { theCase } = file
  const bookings = theCase.live('booking')
  const summaries = theCase.live('operation-summary')
  const ids = new Set([...bookings, ...summaries].flatMap((line) => operationId(line)))
  const found = [...ids].flatMap((id) => {
    const booking = bookings.filter((line) => isAbout(line, id)).at(-1) ?? null
    const summary = summaries.filter((line) => isAbout(line, id)).at(-1) ?? null
    const plan = summary?.body ?? booking?.body
    if (!plan) return []
    const done = doneAt(theCase, id, summary)
    const moment = done?.moment ?? booking?.body.plannedFor
    if (!moment) return []
    const written =
      timesWritten(theCase, 'booking', (line) => isAbout(line, id)) +
      timesWritten(theCase, 'operation-summary', (line) => isAbout(line, id)) +
      timesWritten(theCase, 'theatre-stamp', (line) => isAbout(line, id) && checkpointOf(line) === 'incision')
    const { side, procedure, surgeon, anaesthetist } = plan
    return [{ id, side, procedure, surgeon, anaesthetist, booking, done, moment, written }]
  })
  return found.sort((a, b) => compareText(a.moment.at, b.moment.at) || compareText(a.id, b.id))
}

/**
 * Whether only the other ear was operated: then a look written for this side is either of the wrong ear, or of an ear for
 * which nothing is planned.
 *
 * @example isOtherEar(operationsOf(file), 'RIGHT') // true where LEFT alone was operated
 */
export function isOtherEar(operations: readonly OperationOnFile[], side: Side): boolean {
  const done = operations.filter((one) => one.done !== null)
  return done.length > 0 && done.every((one) => one.side !== side)
}

function operationId(line: Pick<Line, 'header'>): string[] {
  const { subject } = line.header
  return subject.kind === 'operation' ? [subject.operation] : []
}

function checkpointOf(line: Line): unknown {
  const body = line.body
  return typeof body === 'object' && body !== null && 'checkpoint' in body ? body.checkpoint : undefined
}

function doneAt(theCase: Case, id: string, summary: Line<BodyOf<'operation-summary'>> | null): OperationOnFile['done'] {
  if (summary) return { moment: summary.body.incisionAt, by: summary.header.id }
  const stamp = theCase
    .live('theatre-stamp')
    .find((line) => isAbout(line, id) && line.body.checkpoint === 'incision' && line.body.answer === 'done')
  return stamp ? { moment: { ...stamp.header.happenedAt, at: stamp.at }, by: stamp.header.id } : null
}

/** Whether a line is about one ear. */
export function isOfEar(line: Pick<Line, 'header'>, side: Side): boolean {
  const { subject } = line.header
  return subject.kind === 'ear' && subject.side === side
}

/** The first version of an entry that later ones corrected: its id stays the same through corrections. */
export function rootOf(theCase: Case, id: string): string {
  const seen = new Set<string>()
  let current = id
  while (!seen.has(current)) {
    seen.add(current)
    const before = [...(theCase.line(current)?.header.supersedes ?? [])].sort()[0]
    if (before === undefined) return current
    current = before
  }
  return current
}
