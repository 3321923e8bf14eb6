import { exactInterval, type Interval } from '#core/stats/proportion-interval.ts'

type Known = { readonly events: number; readonly total: number; readonly lost: number }

/** Our own rate by itself: nobody known yet, withheld below the house minimum, or shown with its exact 95 % interval. */
export type OwnRate =
  | { readonly kind: 'nobody' }
  /** Nobody had it: no rate, and how high the true figure could still be. */
  | { readonly kind: 'none-yet'; readonly upTo: number; readonly total: number; readonly enough: boolean }
  | { readonly kind: 'withheld'; readonly from: number; readonly total: number }
  | { readonly kind: 'shown'; readonly share: number; readonly interval: Interval }

/**
 * What may be shown of our own count by itself. Too few known: the rate is withheld, not the count. No event at all is
 * always said with its upper bound, because "none" reads as "never".
 *
 * @example ownRateOf({ events: 0, total: 12, lost: 0 }, 20) // { kind: 'none-yet', upTo: 0.2646…, total: 12, enough: false }
 * Reference: exact interval after Clopper and Pearson 1934; 1 − 0.025^(1/12) for none in 12.
 */
export function ownRateOf({ events, total }: Known, shownFrom: number): OwnRate {
  const interval = exactInterval({ events, total })
  if (interval.kind === 'refusal') return { kind: 'nobody' }
  const enough = total >= shownFrom
  if (events === 0) return { kind: 'none-yet', upTo: interval.answer.high, total, enough }
  if (!enough) return { kind: 'withheld', from: shownFrom, total }
  return { kind: 'shown', share: events / total, interval: interval.answer }
}

/**
 * The share if none of those not known had it, and if all of them had. Null while nobody is due.
 *
 * @example bestAndWorst({ events: 2, total: 18, lost: 2 }) // { low: 0.1, high: 0.2 }
 */
export function bestAndWorst({ events, total, lost }: Known): Interval | null {
  const all = total + lost
  return all === 0 ? null : { low: events / all, high: (events + lost) / all }
}
