import { type ProcedureId, procedureIds } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import type { CountUnit } from '../study.ts'
import type { OwnOf } from '../told.ts'
import { isOwnOutcome, type OwnOutcome } from './own-outcome.ts'

export type ApprovedFigures = Line<BodyOf<'figures-approved'>>
export type ApprovedFigure = ApprovedFigures['body']['figures'][number] & {
  readonly asOf: string
  /** The entry that approves it. */
  readonly entry: string
}

/** The last approved figures of one operation in one species; null while nobody approved any, or two approvals stand side by side. */
export function approvedFor(house: Case, species: Species, procedure: ProcedureId): ApprovedFigures | null {
  const lines = house
    .live('figures-approved')
    .filter(({ body }) => body.species === species && body.procedure === procedure)
  return lines.length === 1 ? (lines[0] ?? null) : null
}

/**
 * One approved count, for what owners are told. Without an approval our own results are not said, however many there are.
 *
 * @example approvedFigure(house, { species: 'dog', procedure: 'teca-lbo', unit: 'ear', outcome: 'deep_recurrence' })?.total
 */
export function approvedFigure(
  house: Case,
  question: {
    readonly species: Species
    readonly procedure: ProcedureId
    readonly unit: CountUnit
    readonly outcome: OwnOutcome
  },
): ApprovedFigure | null {
  const approved = approvedFor(house, question.species, question.procedure)
  const figure = approved?.body.figures.find(
    ({ outcome, unit }) => outcome === question.outcome && unit === question.unit,
  )
  return approved && figure ? { ...figure, asOf: approved.body.asOf, entry: approved.header.id } : null
}

/** What this house approved of any question, for what owners are told. */
export function ownOfHouse(house: Case): OwnOf {
  return ({ species, procedure, unit, outcome }) => {
    const ours = procedureIds.find((id) => id === procedure)
    return ours && isOwnOutcome(outcome) ? approvedFigure(house, { species, procedure: ours, unit, outcome }) : null
  }
}
