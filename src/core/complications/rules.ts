import type { Sourced } from '#core/evidence/sourced.ts'
import type { TroubleClass, TroubleEvent } from './trouble-codes.ts'

/** What content says of troubles: what each is proposed to be, and how long one has to have heard of an ear to know. */
export type TroubleRules = {
  /** Null: nothing is proposed. */
  readonly proposed: Readonly<Record<TroubleEvent, Sourced<TroubleClass> | null>>
  /** Days after the operation from which on early trouble is known to have come or not. */
  readonly early: Sourced<number>
  /** The same for trouble that comes late. */
  readonly year: Sourced<number>
  /** From which day on a look is the one after a year. */
  readonly yearLook: Sourced<number>
  readonly askedAfterAYear: readonly TroubleEvent[]
}

/**
 * From which day after the operation on one can know whether a trouble came.
 *
 * @example knownFromDay('wound-gap', rules) // 30
 */
export function knownFromDay(event: TroubleEvent, { early, year, askedAfterAYear }: TroubleRules): number {
  return askedAfterAYear.includes(event) ? year.value : early.value
}

/**
 * On which day after the operation, or later, somebody must have known how the ear was for it to be without a trouble.
 *
 * @example lookedFromDay('jaw-pain', rules) // 303
 */
export function lookedFromDay(event: TroubleEvent, { early, yearLook, askedAfterAYear }: TroubleRules): number {
  return askedAfterAYear.includes(event) ? yearLook.value : early.value
}
