import type { Sourced } from '#core/evidence/sourced.ts'

/**
 * Which isolates of one animal and one kind of organism count. The first of a calendar year; the first of an episode of
 * so many days; or, within such an episode, also a later one whose pattern differs by more points than the threshold.
 */
export type FirstIsolateRule =
  | { readonly kind: 'calendar-year' }
  | { readonly kind: 'episode'; readonly days: number }
  | {
      readonly kind: 'phenotype'
      readonly days: number
      readonly points: number
      /** Whether the points must pass the threshold, or reach it. */
      readonly when: 'exceeded' | 'reached'
    }

/**
 * Places of sampling in one table (only when asked), each in its own after the first isolates were chosen, or each in its
 * own with its own first isolates.
 */
export type SitesTold = 'together' | 'apart' | 'each'

export type AntibiogramMethod = {
  readonly first: FirstIsolateRule
  readonly sites: SitesTold
  /** First and last day of sampling that counts; null where the period is open. */
  readonly from: string | null
  readonly until: string | null
  /** A share of fewer isolates than this is not told at all. */
  readonly minimum: number
  /** The share of fewer is told and flagged. */
  readonly flagBelow: number
  /** One edition for the whole table. */
  readonly edition: string
}

export type DifferencePoints = { readonly susceptibleToResistant: number; readonly byOneStep: number }

/** What is usual, each with its source; content fills it. */
export type AntibiogramRules = {
  readonly flagBelow: Sourced<number>
  /** What a practice may do with, where it has fewer: isolates in all. */
  readonly practiceMinimum: Sourced<number>
  readonly firstOfPeriod: Sourced<'calendar-year'>
  readonly episodeDays: Sourced<number>
  readonly points: Sourced<DifferencePoints>
  readonly threshold: Sourced<{ readonly points: number; readonly when: 'exceeded' | 'reached' }>
  readonly susceptibleOnly: Sourced<'S'>
  readonly clinicalOnly: Sourced<'clinical'>
  readonly hostsApart: Sourced<'apart'>
  readonly sitesApart: Sourced<'apart'>
}
