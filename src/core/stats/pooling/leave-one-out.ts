import type { Count } from '../proportion-interval.ts'
import { type Pooled, poolCounts } from './pool.ts'

/** Each study left out costs a whole fit; with more studies than this no single one decides. */
export const mostLeftOut = 100

/**
 * The studies pooled again without each of them in turn: how much one study decides. Nothing with fewer than three studies,
 * where what is left could not be pooled.
 *
 * @returns the pooled rest, in the order of the studies left out.
 * @example leaveOneOut(counts, { method: 'binomial-normal' })
 */
export function leaveOneOut(counts: readonly Count[], how: Parameters<typeof poolCounts>[1]): readonly Pooled[] {
  if (counts.length < 3 || counts.length > mostLeftOut) return []
  return counts.map((_, index) => poolCounts(counts.toSpliced(index, 1), how))
}
