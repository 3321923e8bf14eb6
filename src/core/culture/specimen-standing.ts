import type { Side } from '#core/animal/species.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { Drug } from '#core/formulary/drug.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { sideOf, specimenOf } from '#core/owed/specimen-loop.ts'
import { antibioticsOnBoard, type OnBoard } from '#core/theatre/antibiotics-on-board.ts'
import { dayAfter, dayOf, daysBetween, type Period } from '#core/time/calendar-day.ts'
import { type AntibioticSince, antibioticsSince } from './antibiotics-since.ts'

/** What keeps a specimen from leading a choice by itself. A person may still act on it, and sees why to be slow. */
export type SpecimenDoubt = 'canal' | 'old' | 'before-operation' | 'preliminary'

export type SpecimenStanding = {
  readonly specimen: Line<BodyOf<'specimen'>>
  readonly side: Side | null
  /** Whole days since it was taken. */
  readonly days: number
  readonly onBoard: OnBoard
  readonly since: readonly AntibioticSince[]
  /** Other specimens of the same operation and ear. */
  readonly beside: readonly Line<BodyOf<'specimen'>>[]
  readonly doubts: readonly SpecimenDoubt[]
}

export type SpecimenRules = {
  /** From when on a result is old for a choice of today. */
  readonly oldAfter: Sourced<Period>
}

type About = { readonly at: string; readonly drugs: readonly Drug[]; readonly rules: SpecimenRules }

/**
 * The specimen behind a report as it stands on a day: its age, side and place, what the animal had of antibiotics then
 * and since. Null when the specimen is not in the case.
 *
 * @example specimenStanding(file, report, { at, drugs: formulary, rules })?.doubts // ['canal', 'old']
 */
export function specimenStanding(
  { theCase, clinic }: Pick<CaseFile, 'theCase' | 'clinic'>,
  report: Line<BodyOf<'specimen-result'>>,
  { at, drugs, rules }: About,
): SpecimenStanding | null {
  const specimen = specimenOf(theCase, report.body.specimen)
  if (!specimen) return null
  const side = sideOf(specimen)
  const taken = dayOf({ at: specimen.at, zone: clinic.zone })
  const today = dayOf({ at, zone: clinic.zone })
  const { operation, site } = specimen.body
  // Tissue is read for what it is, wherever it was cut.
  const isCulture = report.body.growth !== 'not-a-culture'
  const operatedAfter = operationsOf({ theCase }).some(
    ({ id, side: operated, done }) =>
      done !== null && id !== operation && operated === side && done.moment.at > specimen.at && done.moment.at <= at,
  )
  return {
    specimen,
    side,
    days: daysBetween(taken, today),
    onBoard: antibioticsOnBoard(theCase, specimen.at, drugs),
    since: antibioticsSince(theCase, { after: specimen.at, until: at, zone: clinic.zone }, drugs),
    beside: theCase
      .live('specimen')
      .filter(
        ({ header, body }) =>
          header.id !== specimen.header.id &&
          operation !== null &&
          body.operation === operation &&
          header.subject.kind === 'ear' &&
          header.subject.side === side,
      ),
    doubts: [
      ...(isCulture && (site === 'canal' || site === 'canal-tissue') ? (['canal'] as const) : []),
      ...(today > dayAfter(taken, rules.oldAfter.value) ? (['old'] as const) : []),
      ...(operatedAfter ? (['before-operation'] as const) : []),
      ...(report.body.status === 'preliminary' ? (['preliminary'] as const) : []),
    ],
  }
}
