import type { MainReason } from '#core/animal/main-reason.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { isOfEar, type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import { wasTold } from '#core/owed/our-tries.ts'
import { dayOf, daysBetween } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'
import type { OwnCountingRules } from './own-outcome.ts'
import { misplacedAt } from './placed.ts'

/** One operated ear with everything that was seen of it until the same ear was operated again. */
export type OwnCase = {
  readonly file: CaseFile
  readonly operation: OperationOnFile
  /** The day of the cut, where the clinic is. */
  readonly day: string
  readonly checks: readonly Line<BodyOf<'check'>>[]
  readonly rounds: readonly Line<BodyOf<'ward-score'>>[]
  readonly statuses: readonly Line<BodyOf<'twelve-months'>>[]
  readonly late: readonly Line<BodyOf<'late-event'>>[]
  /** What was written down as a trouble of this operation, of the ear or of the animal. */
  readonly troubles: readonly Line<BodyOf<'complication'>>[]
  readonly baseline: BodyOf<'baseline'> | null
  readonly summary: BodyOf<'operation-summary'> | null
  readonly death: Line<BodyOf<'death'>> | null
  /** The day on which the same ear was operated again; null when it was not. */
  readonly again: string | null
  /** What it was operated for then, as the signed summary says it. */
  readonly againFor: MainReason | null
}

/** Every operated ear of a case, oldest first. What is only booked is none. */
export function ownCasesOf(file: CaseFile): OwnCase[] {
  const { theCase, clinic } = file
  const done = operationsOf(file).filter((operation) => operation.done !== null)
  const dayIn = (at: string) => dayOf({ at, zone: clinic.zone })
  return done.map((operation): OwnCase => {
    const from = operation.moment.at
    const next = done.find(({ side, moment }) => side === operation.side && moment.at > from)
    const within = ({ at }: Pick<Line, 'at'>) => at > from && (!next || at <= next.moment.at)
    const ofThisEar = (line: Line) => isOfEar(line, operation.side) && within(line)
    const day = dayIn(from)
    const summaryOf = (id: string) => linesAbout(theCase, 'operation-summary', id).at(-1)?.body ?? null
    // What names this operation and the other ear, or a day before it, is for a person to put right, and counts nowhere until then.
    const belongs = (id: string, { header: { subject } }: Line, seen: Moment) =>
      id === operation.id && misplacedAt({ side: operation.side, day }, subject, seen).length === 0
    return {
      file,
      operation,
      day,
      checks: theCase.live('check').filter(ofThisEar),
      rounds: theCase.live('ward-score').filter(within),
      // What was written with nobody reached tells nothing.
      statuses: theCase.live('twelve-months').filter((line) => ofThisEar(line) && wasTold(line.body)),
      // A late event names its operation, whenever and wherever it was seen.
      late: theCase.live('late-event').filter((line) => belongs(line.body.operation, line, line.body.firstSeen)),
      troubles: theCase
        .live('complication')
        .filter((line) => belongs(line.body.operation, line, line.body.firstNoticed)),
      baseline: theCase.live('baseline').findLast(({ at }) => at <= from)?.body ?? null,
      summary: summaryOf(operation.id),
      death: theCase.latest('death') ?? null,
      again: next ? dayIn(next.moment.at) : null,
      againFor: next ? (summaryOf(next.id)?.mainReason ?? null) : null,
    }
  })
}

/**
 * An operated ear with only what was seen of it up to a day, where the clinic is: looks, rounds and answers by their day, a
 * late event and a trouble by the day on which they were first seen, whenever they were written down. What was written of
 * the operation itself stays.
 *
 * @example ownCaseUntil(own, '2026-01-31').checks // those of January and before
 */
export function ownCaseUntil(own: OwnCase, day: string): OwnCase {
  const { zone } = own.file.clinic
  const isSeen = ({ at }: Pick<Line, 'at'>) => dayOf({ at, zone }) <= day
  return {
    ...own,
    checks: own.checks.filter(isSeen),
    rounds: own.rounds.filter(isSeen),
    statuses: own.statuses.filter(isSeen),
    late: own.late.filter(({ body }) => dayOf(body.firstSeen) <= day),
    troubles: own.troubles.filter(({ body }) => dayOf(body.firstNoticed) <= day),
    death: own.death && isSeen(own.death) ? own.death : null,
    again: own.again !== null && own.again <= day ? own.again : null,
  }
}

/** Long enough after the cut that no block and no anaesthetic acts any more. */
export function isPastBlock(
  { operation }: Pick<OwnCase, 'operation'>,
  { nerveFromHours }: Pick<OwnCountingRules, 'nerveFromHours'>,
) {
  const soonest = Date.parse(operation.moment.at) + nerveFromHours.value * 3_600_000
  return ({ at }: Pick<Line, 'at'>) => Date.parse(at) >= soonest
}

/** Days since the operation on the clinic's calendar: 0 on the day itself. */
export function daySince({ file, day }: Pick<OwnCase, 'file' | 'day'>, at: string): number {
  return daysBetween(day, dayOf({ at, zone: file.clinic.zone }))
}

/** Late swellings, abscesses and tracts: what the trade calls a recurrence of the ear. */
export const deepKinds: readonly string[] = ['swelling', 'abscess', 'draining-tract']

export function deepEvents(own: Pick<OwnCase, 'late'>): OwnCase['late'] {
  return own.late.filter(({ body }) => deepKinds.includes(body.what))
}
