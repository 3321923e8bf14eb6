import { leaveOneOut } from '../stats/pooling/leave-one-out.ts'
import { type Pooled, poolCounts } from '../stats/pooling/pool.ts'
import type { Interval } from '../stats/proportion-interval.ts'
import { foundIn, type PublishedCount } from './published.ts'
import { answeringCounts, type Middle, middleOf, type Told } from './told.ts'

/** What a forest plot shows: every study that counts, then what is made of them together. */
export type Forest = {
  readonly studies: readonly PublishedCount[]
  /** The share of a typical study, by the binomial–normal model; null with fewer than two studies or without a point. */
  readonly typical: { readonly share: number; readonly interval: Interval; readonly prediction: Interval | null } | null
  readonly pooled: Pooled | null
  /** What a clinic should expect that nobody has counted. */
  readonly expected: Middle | null
  /** The typical share without each study in turn; empty below three studies. */
  readonly without: readonly { readonly study: string; readonly share: number | null; readonly interval: Interval }[]
}

/**
 * The rows of a forest plot and of the table that says the same.
 *
 * @example forestOf(toldOf(question, evidence)).typical?.share
 */
export function forestOf({ published, expected }: Told): Forest {
  const answering = answeringCounts(published)
  const counts = answering.map(({ count }) => count)
  const pooled = counts.length >= 2 ? poolCounts(counts, { method: 'binomial-normal' }) : null
  const left = counts.length >= 3 ? leaveOneOut(counts, { method: 'binomial-normal' }) : []
  return {
    studies: foundIn(published),
    typical:
      pooled && pooled.estimate !== null
        ? { share: pooled.estimate, interval: pooled.interval, prediction: pooled.prediction }
        : null,
    pooled,
    expected: expected && middleOf(expected.predictive.distribution),
    without: left.map((one, at) => ({
      study: answering[at]?.row.study ?? '',
      share: one.estimate,
      interval: one.interval,
    })),
  }
}
