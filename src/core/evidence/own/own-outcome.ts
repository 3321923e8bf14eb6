import type { Sourced } from '../sourced.ts'

/** The outcomes that our own record can answer for an ear. All others stay unknown here, however often they happened. */
export const ownOutcomes = [
  'facial_nerve_deficit_any',
  'facial_nerve_deficit_permanent',
  'horner_any',
  'horner_permanent',
  'vestibular_any',
  'vestibular_permanent',
  'corneal_ulcer',
  'wound_infection_or_dehiscence',
  'haemorrhage_intraop_any',
  'perioperative_death',
  'deep_recurrence',
  'revision_surgery',
  'resolution_or_improved',
] as const
export type OwnOutcome = (typeof ownOutcomes)[number]

export function isOwnOutcome(outcome: string): outcome is OwnOutcome {
  return ownOutcomes.some((one) => one === outcome)
}

/** Days of the operation's own calendar from which on, or until which, our own looks count. Content gives the values. */
export type OwnCountingRules = {
  /** A look sooner than this says nothing of a nerve: the block or the anaesthetic may still act. Hours after the cut. */
  readonly nerveFromHours: Sourced<number>
  /** What is new until this day belongs to the operation; without it by then, the ear is known to be free of it. */
  readonly earlyUntilDay: Sourced<number>
  /** A wound that is closed at a look on this day or later was neither infected nor open. */
  readonly woundFromDay: Sourced<number>
  /** A nerve that works at the last look on this day or later has no lasting deficit. */
  readonly recoveredFromDay: Sourced<number>
  /** Present on this day or later: lasting. A house policy may set it. */
  readonly lastingFromDay: Sourced<number>
  /** A death until this day is around the operation; it counts when it was put down to the operation or the anaesthetic. */
  readonly deathUntilDay: Sourced<number>
  /** The ear is asked about after so many days; until then nothing is lost, it is only not due. */
  readonly yearFromDay: Sourced<number>
  /** What somebody says or sees of the ear from this day on is its look after a year; sooner it settles nothing. */
  readonly yearLookFromDay: Sourced<number>
  /** A death is an end of its own over time when somebody knew how the ear was so many days before it. */
  readonly deathWithinDays: Sourced<number>
  /** A share over time is said as long as so many ears are still followed. */
  readonly followedEnough: Sourced<number>
  /** From so many on with that outcome known our own rate is shown by itself. A house policy may set it. */
  readonly shownFrom: Sourced<number>
}

/** Whether an outcome happened to an ear; null is not known, and is never "no". */
export type KnownOutcome = boolean | null
