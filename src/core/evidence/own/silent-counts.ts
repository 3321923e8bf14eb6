import type { OwnCount } from './count-own.ts'

/** A yearly report leaves out what is not there. */
type Counted = Pick<OwnCount, 'total' | 'lost' | 'notYetDueWithEvent'> & Partial<Pick<OwnCount, 'ofNoSide'>>

/** Counts of which nothing is known yet, together: of each of them as many are due. */
export type Silent<Count> = { readonly due: number; readonly counts: readonly [Count, ...Count[]] }

/**
 * Parts counts that say something from those that do not: nobody is due, or nobody of those due is known, none of the
 * others had it already, and of no ear it is only the side that is not known. Counts of one list with as many due are
 * due of the same ears, so one list of cases stands behind them all.
 *
 * @example partCounts(counts).silent[0]?.due // 0: nobody is due
 */
export function partCounts<Count extends Counted>(
  counts: readonly Count[],
): { readonly said: readonly Count[]; readonly silent: readonly Silent<Count>[] } {
  const byDue = new Map<number, [Count, ...Count[]]>()
  const said: Count[] = []
  for (const count of counts) {
    if (count.total > 0 || count.notYetDueWithEvent > 0 || (count.ofNoSide ?? 0) > 0) {
      said.push(count)
      continue
    }
    const same = byDue.get(count.lost)
    if (same) same.push(count)
    else byDue.set(count.lost, [count])
  }
  const silent = [...byDue].map(([due, some]) => ({ due, counts: some })).sort((a, b) => a.due - b.due)
  return { said, silent }
}
