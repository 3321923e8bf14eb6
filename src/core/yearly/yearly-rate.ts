import type { OwnCount } from '../evidence/own/count-own.ts'
import type { OwnOutcome } from '../evidence/own/own-outcome.ts'
import { bestAndWorst, ownRateOf } from '../evidence/own/own-rate.ts'
import type { CountUnit } from '../evidence/study.ts'
import { type Interval, wilsonInterval } from '../stats/proportion-interval.ts'

export type Ends = readonly [low: number, high: number]

/** One count with all that may be said of it; a share is withheld where too few are known. */
export type YearlyRate = {
  readonly outcome: OwnOutcome
  readonly unit: CountUnit
} & Pick<OwnCount, 'events' | 'total' | 'lost' | 'died' | 'notYetDue' | 'notYetDueWithEvent'> & {
    readonly said: 'nobody' | 'none-yet' | 'withheld' | 'shown'
    readonly share: number | null
    readonly exact: Ends | null
    readonly wilson: Ends | null
    readonly acrossAnimals: Ends | null
    /** While nobody has had it: how high the true share could still be. */
    readonly upTo: number | null
    /** Of the lost ears: their animal has it, of neither ear by itself. Left out where there is none. */
    readonly ofNoSide?: number
    /** If none, and if all, of those not known had it. */
    readonly bestAndWorst: Ends | null
  }

/**
 * What may be said of one count, with six decimals.
 *
 * @example rateOf(count, 20).said // 'withheld'
 */
export function rateOf(count: OwnCount, shownFrom: number): YearlyRate {
  const { question, events, total, lost, died, ofNoSide, notYetDue, notYetDueWithEvent } = count
  const rate = ownRateOf(count, shownFrom)
  const shown = rate.kind === 'shown'
  const wilson = shown ? wilsonInterval(count) : null
  const span = total === 0 ? null : bestAndWorst(count)
  return {
    outcome: question.outcome,
    unit: question.unit,
    events,
    total,
    lost,
    died,
    ...(ofNoSide > 0 && { ofNoSide }),
    notYetDue,
    notYetDueWithEvent,
    said: rate.kind,
    share: shown ? six(rate.share) : null,
    exact: shown ? ends(rate.interval) : null,
    wilson: wilson?.kind === 'answer' ? ends(wilson.answer) : null,
    acrossAnimals: shown && count.acrossAnimals ? ends(count.acrossAnimals) : null,
    upTo: rate.kind === 'none-yet' ? six(rate.upTo) : null,
    bestAndWorst: span && ends(span),
  }
}

function ends({ low, high }: Interval): Ends {
  return [six(low), six(high)]
}

/** Six decimals, so that the last binary digit of another machine changes nothing. */
export function six(value: number): number {
  return Math.round(value * 1e6) / 1e6
}
