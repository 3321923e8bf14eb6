import { answer, type Outcome, refuse } from '../outcome/outcome.ts'
import { type Interval, type NoCasesYet, scoreInterval } from './proportion-interval.ts'

/** Events and total of one cluster: of the ears of one animal. */
export type ClusterCount = { readonly events: number; readonly total: number }

/**
 * An interval for a share of ears that knows that two ears of one animal are not two animals: Wilson's, with as many ears
 * as the sample is worth (ears over the design effect of the ratio estimator). Never narrower than with ears told apart.
 *
 * @returns the interval and the design effect, 1 where ears of an animal say no more than ears of two
 * @example clusteredInterval([{ events: 2, total: 2 }, { events: 0, total: 1 }])
 * Where nobody or everybody had it, or there is one animal, how tied they are cannot be told: animals are counted then.
 * Reference: Rao & Scott, Biometrics 1992;48:577–585 (remembered); the floor of 1 is a house judgement.
 */
export function clusteredInterval(
  clusters: readonly ClusterCount[],
  confidence = 0.95,
): Outcome<{ readonly interval: Interval; readonly designEffect: number }, NoCasesYet> {
  const events = clusters.reduce((sum, cluster) => sum + cluster.events, 0)
  const total = clusters.reduce((sum, cluster) => sum + cluster.total, 0)
  if (total === 0) return refuse({ because: 'no-cases-yet' })
  const share = events / total
  const used = clusters.filter((cluster) => cluster.total > 0)
  const designEffect = effectOf(used, share, total)
  return answer({ interval: scoreInterval(share, total / designEffect, (1 - confidence) / 2), designEffect })
}

function effectOf(clusters: readonly ClusterCount[], share: number, total: number): number {
  const many = clusters.length
  if (many === total) return 1
  const simple = share * (1 - share) * total
  // Nobody or everybody, or one animal alone: how tied two ears are cannot be told, so they count as one.
  if (simple === 0 || many < 2) return total / many
  return Math.max(1, (squaresOf(clusters, share) * many) / (many - 1) / simple)
}

/** Alike animals are added together and in one order, so that the sum does not hang on who was written down first. */
function squaresOf(clusters: readonly ClusterCount[], share: number): number {
  const alike = new Map<number, number>()
  for (const { events, total } of clusters) {
    const off = (events - share * total) ** 2
    alike.set(off, (alike.get(off) ?? 0) + 1)
  }
  return [...alike].sort(([a], [b]) => a - b).reduce((sum, [off, animals]) => sum + off * animals, 0)
}
