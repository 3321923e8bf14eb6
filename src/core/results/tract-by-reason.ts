import { type MainReason, mainReasons } from '../animal/main-reason.ts'
import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import { never } from '../outcome/outcome.ts'
import { endTimesOf, type Followed } from '../stats/survival/life-table.ts'
import { logRank } from '../stats/survival/log-rank.ts'
import { type TractRules, tractEnd } from './tract-times.ts'

/** Ears of one reason of which anybody has said anything, and late tracts among them. */
export type ComparedReason = { readonly reason: MainReason; readonly ears: number; readonly events: number }

/** Whether late tracts come at other times after one reason than after another. */
export type TractsByReason = {
  readonly compared: readonly ComparedReason[]
  /** Too few of them are followed to be compared. */
  readonly tooFew: readonly ComparedReason[]
} & (
  | { readonly kind: 'fewer-than-two' }
  | { readonly kind: 'no-event' }
  | { readonly kind: 'compared-over-time'; readonly chiSquare: number; readonly degrees: number; readonly p: number }
)

/**
 * Compares the time to the first late swelling, abscess or tract between reasons with at least so many followed ears. Death
 * counts as leaving here. Ears without a recorded reason are in no group. Nobody drew these groups by lot, and two ears of
 * one animal count as two.
 *
 * @param least the house minimum for each group
 * @example tractsByReason(ears, 20, 90).kind
 * Reference: log-rank test, Mantel 1966; Peto & Peto 1972.
 */
export function tractsByReason(
  ears: readonly OperatedEar[],
  least: number,
  deathWithinDays: TractRules['deathWithinDays'],
): TractsByReason {
  const groups = mainReasons.flatMap((reason) => {
    const rows = ears
      .filter((ear) => ear.reason === reason)
      .map((ear) => tractEnd(ear, deathWithinDays))
      .filter(isFollowed)
    const events = rows.filter(({ status }) => status === 1).length
    return rows.length === 0 ? [] : [{ said: { reason, ears: rows.length, events }, rows }]
  })
  const compared = groups.filter(({ rows }) => rows.length >= least)
  const about = {
    compared: compared.map(({ said }) => said),
    tooFew: groups.filter(({ rows }) => rows.length < least).map(({ said }) => said),
  }
  if (compared.length < 2) return { ...about, kind: 'fewer-than-two' }
  if (about.compared.every(({ events }) => events === 0)) return { ...about, kind: 'no-event' }
  const found = logRank([compared.map(({ rows }) => endTimesOf(rows))])
  if (found.kind === 'answer') {
    const { chiSquare, degrees, p } = found.answer
    return { ...about, kind: 'compared-over-time', chiSquare, degrees, p }
  }
  switch (found.refusal.because) {
    // Expected events in one group alone: all the others had left before the first one.
    case 'fewer-than-two-groups':
    case 'no-spread':
      return { ...about, kind: 'fewer-than-two' }
    case 'nobody-followed':
    case 'time-not-usable':
      throw new Error(`Followed ears cannot be compared: ${found.refusal.because}.`)
    default:
      return never(found.refusal)
  }
}

/** Nobody has said anything of an ear that is followed for no day. */
function isFollowed({ time, status }: Followed): boolean {
  return time > 0 || status !== 0
}
