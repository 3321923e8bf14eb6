import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { addDays } from '#core/time/calendar-day.ts'
import type { CountUnit } from '../study.ts'
import type { KnownOutcome } from './known-outcomes.ts'
import type { OperatedEar } from './operated-ear.ts'
import type { OwnCountingRules, OwnOutcome } from './own-outcome.ts'

export type OwnQuestion = {
  readonly species: Species
  readonly procedure: ProcedureId
  readonly unit: CountUnit
  readonly outcome: OwnOutcome
}

/** Our own count of one outcome: never of dogs and cats, of two operations, or of ears and animals together. */
export type OwnCount = {
  readonly question: OwnQuestion
  /** Those of whom it is known. */
  readonly events: number
  readonly total: number
  /** Long enough ago to be known, and not known. */
  readonly lost: number
  /** Of the lost: died before it could be known. */
  readonly died: number
  /** Too recent to be asked; those who had it already are named, and counted only when their time has come. */
  readonly notYetDue: number
  readonly notYetDueWithEvent: number
  /** First and last day of operation among those that are due; null when none is. */
  readonly period: { readonly from: string; readonly until: string } | null
}

/**
 * Counts one outcome among the operated ears that were asked for. An ear counts from the day on which its outcome is due,
 * also when it happened sooner: counting events early and their absence late would make every figure too high.
 *
 * @example countOwn({ species: 'dog', procedure: 'teca-lbo', unit: 'ear', outcome: 'deep_recurrence' }, ears, today, rules)
 */
export function countOwn(
  question: OwnQuestion,
  ears: readonly OperatedEar[],
  today: string,
  rules: OwnCountingRules,
): OwnCount {
  const groups = grouped(
    ears.filter(({ species, procedure }) => species === question.species && procedure === question.procedure),
    question.unit,
  ).map((some) => ({
    last:
      some
        .map(({ on }) => on)
        .sort()
        .at(-1) ?? some[0].on,
    known: ofAll(
      question.outcome,
      some.map(({ known }) => known[question.outcome]),
    ),
    died: some.some(({ died }) => died !== null),
  }))
  const isDue = ({ last }: { readonly last: string }) => addDays(last, dueDays(question.outcome, rules)) <= today
  const due = groups.filter(isDue)
  const waiting = groups.filter((group) => !isDue(group))
  const known = due.filter((group) => group.known !== null)
  const lost = due.filter((group) => group.known === null)
  const days = due.map(({ last }) => last).sort()
  return {
    question,
    events: known.filter((group) => group.known).length,
    total: known.length,
    lost: lost.length,
    died: lost.filter(({ died }) => died).length,
    notYetDue: waiting.length,
    notYetDueWithEvent: waiting.filter((group) => group.known).length,
    period: days[0] === undefined ? null : { from: days[0], until: days.at(-1) ?? days[0] },
  }
}

/** The day from which on an ear without an answer is lost and no longer only recent. */
export function dueDays(outcome: OwnOutcome, rules: OwnCountingRules): number {
  switch (outcome) {
    case 'haemorrhage_intraop_any':
      return 1
    case 'perioperative_death':
      return rules.deathUntilDay.value + 1
    case 'facial_nerve_deficit_any':
    case 'horner_any':
    case 'vestibular_any':
    case 'corneal_ulcer':
    case 'wound_infection_or_dehiscence':
      return rules.earlyUntilDay.value + 1
    case 'facial_nerve_deficit_permanent':
    case 'horner_permanent':
    case 'vestibular_permanent':
      return rules.lastingFromDay.value
    case 'deep_recurrence':
    case 'revision_surgery':
    case 'resolution_or_improved':
      return rules.yearFromDay.value
  }
}

function grouped(ears: readonly OperatedEar[], unit: CountUnit): readonly [OperatedEar, ...OperatedEar[]][] {
  const key = { ear: 'operation', animal: 'animal', procedure: 'session' } as const
  const groups = new Map<string, [OperatedEar, ...OperatedEar[]]>()
  for (const ear of ears) {
    const name = ear[key[unit]]
    const group = groups.get(name)
    if (group) group.push(ear)
    else groups.set(name, [ear])
  }
  return [...groups.values()]
}

/**
 * A harm happened to an animal when it happened to one ear, and did not when every ear is known to be free of it. A good
 * result is the other way round: all ears, not one.
 */
function ofAll(outcome: OwnOutcome, known: readonly KnownOutcome[]): KnownOutcome {
  const decides = outcome !== 'resolution_or_improved'
  if (known.includes(decides)) return decides
  return known.includes(null) ? null : !decides
}
