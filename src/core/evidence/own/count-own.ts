import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Species } from '#core/animal/species.ts'
import { acrossAnimals } from '#core/stats/across-animals.ts'
import type { Interval } from '#core/stats/proportion-interval.ts'
import { addDays } from '#core/time/calendar-day.ts'
import { type CountUnit, countUnits } from '../study.ts'
import type { OperatedEar } from './operated-ear.ts'
import type { KnownOutcome, OwnCountingRules, OwnOutcome } from './own-outcome.ts'

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
  /**
   * Of the lost ears: the animal has it, both ears were operated, and of which of them it is nobody can say. It is an event
   * among animals and anaesthetics.
   */
  readonly ofNoSide: number
  /** Too recent to be asked; those who had it already are named, and counted only when their time has come. */
  readonly notYetDue: number
  readonly notYetDueWithEvent: number
  /**
   * Of ears: Wilson's interval that knows that two ears of one animal are not two animals. Null for other units, where
   * nobody is known, and where no animal has two known ears: then it says no more than the plain one.
   */
  readonly acrossAnimals: Interval | null
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
  return countOf(question, grouped(earsAsked(question, ears), question.unit), today, rules)
}

/**
 * Every count of one operation in one species, outcome by outcome in each unit; the ears are put into groups once, which
 * matters from thousands on.
 *
 * @example countEvery({ species: 'dog', procedure: 'teca-lbo' }, ownOutcomes, ears, today, rules)
 */
export function countEvery(
  of: Pick<OwnQuestion, 'species' | 'procedure'>,
  outcomes: readonly OwnOutcome[],
  ears: readonly OperatedEar[],
  today: string,
  rules: OwnCountingRules,
): OwnCount[] {
  const asked = earsAsked(of, ears)
  const groups = new Map(countUnits.map((unit) => [unit, grouped(asked, unit)]))
  return outcomes.flatMap((outcome) =>
    countUnits.map((unit) => countOf({ ...of, outcome, unit }, groups.get(unit) ?? [], today, rules)),
  )
}

function earsAsked(
  of: Pick<OwnQuestion, 'species' | 'procedure'>,
  ears: readonly OperatedEar[],
): readonly OperatedEar[] {
  return ears.filter(({ species, procedure }) => species === of.species && procedure === of.procedure)
}

/** One pass, and nothing made for each group: over ten thousand ears every outcome is counted in three units. */
function countOf(question: OwnQuestion, groups: readonly Grouped[], today: string, rules: OwnCountingRules): OwnCount {
  const { outcome, unit } = question
  const standingOf = standingBy(outcome, today, rules)
  const count = { events: 0, free: 0, lost: 0, notYetDue: 0 }
  const found = { died: 0, ofNoSide: 0, notYetDueWithEvent: 0, from: '', until: '' }
  const seen: { animal: string; had: boolean }[] = []
  for (const group of groups) {
    const known = ofAll(question, group.ears)
    const standing = standingOf(group, known)
    count[standing] += 1
    if (standing === 'notYetDue') {
      if (known) found.notYetDueWithEvent += 1
      continue
    }
    if (found.from === '' || group.last < found.from) found.from = group.last
    if (group.last > found.until) found.until = group.last
    if (standing !== 'lost') seen.push({ animal: group.ears[0].animal, had: known === true })
    else {
      if (group.died) found.died += 1
      if (group.ears.some(({ ofNoSide }) => ofNoSide.includes(outcome))) found.ofNoSide += 1
    }
  }
  return {
    question,
    events: count.events,
    total: count.events + count.free,
    lost: count.lost,
    acrossAnimals: unit === 'ear' ? acrossAnimals(seen) : null,
    died: found.died,
    ofNoSide: found.ofNoSide,
    notYetDue: count.notYetDue,
    notYetDueWithEvent: found.notYetDueWithEvent,
    period: found.from === '' ? null : { from: found.from, until: found.until },
  }
}

/** Where one ear, animal or operation stands in a count. */
export const standings = ['events', 'free', 'lost', 'notYetDue'] as const
export type Standing = (typeof standings)[number]

/** One ear, animal or operation as it is counted, with the ears in it. */
export type CountedGroup = {
  readonly ears: readonly [OperatedEar, ...OperatedEar[]]
  readonly standing: Standing
  readonly known: KnownOutcome
  /** Day of its last operation: from then on its time runs. */
  readonly last: string
  readonly died: boolean
}

/** What stands behind a count: each ear, animal or operation once, with where it stands. */
export function countedGroups(
  question: OwnQuestion,
  ears: readonly OperatedEar[],
  today: string,
  rules: OwnCountingRules,
): CountedGroup[] {
  const { outcome, unit } = question
  const standingOf = standingBy(outcome, today, rules)
  return grouped(earsAsked(question, ears), unit).map((group) => {
    const known = ofAll(question, group.ears)
    return { ...group, standing: standingOf(group, known), known }
  })
}

type Grouped = Pick<CountedGroup, 'ears' | 'last' | 'died'>

function standingBy(
  outcome: OwnOutcome,
  today: string,
  rules: OwnCountingRules,
): (group: Grouped, known: KnownOutcome) => Standing {
  // Whoever was operated by this day is due: one day looked up, and not one for each of ten thousand.
  const dueUntil = addDays(today, -dueDays(outcome, rules))
  return ({ last }, known) => {
    if (last > dueUntil) return 'notYetDue'
    return known === null ? 'lost' : known ? 'events' : 'free'
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

function latestOf(ears: readonly OperatedEar[]): string {
  let latest = ''
  for (const { on } of ears) if (on > latest) latest = on
  return latest
}

function grouped(ears: readonly OperatedEar[], unit: CountUnit): Grouped[] {
  const key = { ear: 'operation', animal: 'animal', procedure: 'session' } as const
  const groups = new Map<string, [OperatedEar, ...OperatedEar[]]>()
  for (const ear of ears) {
    const name = ear[key[unit]]
    const group = groups.get(name)
    if (group) group.push(ear)
    else groups.set(name, [ear])
  }
  return [...groups.values()].map((some) => ({
    ears: some,
    last: latestOf(some),
    died: some.some(({ died }) => died !== null),
  }))
}

/**
 * A harm happened to an animal when it happened to one ear, and did not when every ear is known to be free of it. A good
 * result is the other way round: all ears, not one.
 */
function ofAll({ outcome, unit }: Pick<OwnQuestion, 'outcome' | 'unit'>, ears: readonly OperatedEar[]): KnownOutcome {
  const decides = outcome !== 'resolution_or_improved'
  let whole = true
  for (const { known, ofNoSide } of ears) {
    // Of neither ear by itself is known of the animal, and of no ear.
    const one = unit !== 'ear' && ofNoSide.includes(outcome) ? true : known[outcome]
    if (one === decides) return decides
    if (one === null) whole = false
  }
  return whole ? !decides : null
}
