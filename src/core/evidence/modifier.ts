import type { Species } from '../animal/species.ts'
import { expit, logit } from '../stats/logistic.ts'
import type { ShareDistribution } from '../stats/predictive/share-distribution.ts'
import { summaryOf } from '../stats/predictive/summary.ts'
import type { Interval } from '../stats/proportion-interval.ts'
import type { OutcomeCode } from './outcome-code.ts'
import type { Provenance } from './sourced.ts'
import type { CountUnit, Study, StudyProcedure } from './study.ts'

/** Circumstances of which some study says that they change a risk. */
export const modifierFactors = [
  'short-faced',
  'circular-cut',
  'both-ears-at-once',
  'female',
  'skin-disease',
  'antibiotics-after',
] as const
export type ModifierFactor = (typeof modifierFactors)[number]

/** What is published of one circumstance that may change one risk. */
export type Modifier = Provenance & {
  readonly id: string
  readonly factor: ModifierFactor
  readonly species: Species
  readonly procedure: StudyProcedure
  readonly unit: CountUnit
  readonly outcome: OutcomeCode
  readonly effect:
    | { readonly kind: 'arms'; readonly study: string; readonly with: string; readonly without: string }
    /** An odds ratio with its 95 % interval as printed. */
    | { readonly kind: 'printed'; readonly value: number; readonly low: number; readonly high: number }
    /** Only a direction was readable: it contradicts or supports, and changes no number. */
    | { readonly kind: 'direction'; readonly says: 'more' | 'fewer' }
}

/** An odds ratio with its 95 % interval and what it was made from. */
export type OddsRatio = {
  readonly value: number
  readonly interval: Interval
  readonly log: number
  readonly se: number
  readonly from: 'printed' | 'worked-out'
  readonly arms: { readonly with: Arm; readonly without: Arm } | null
}
export type Arm = { readonly events: number; readonly total: number }

const z = 1.959963984540054

/**
 * The odds ratio of a modifier: as printed, or worked out from two arms, each by its own base, with Woolf's interval.
 * Null where nothing but a direction is known, or an arm has no event or nothing else.
 *
 * @example oddsRatioOf(shortFacedBleeding, studies)?.value // 2.22
 * Reference: Woolf, Ann Hum Genet 1955;19:251–253 (remembered).
 */
export function oddsRatioOf({ effect, outcome, species, unit }: Modifier, studies: readonly Study[]): OddsRatio | null {
  if (effect.kind === 'direction') return null
  if (effect.kind === 'printed') {
    const { value, low, high } = effect
    const se = (Math.log(high) - Math.log(low)) / (2 * z)
    return { value, interval: { low, high }, log: Math.log(value), se, from: 'printed', arms: null }
  }
  const rows = studies.find(({ id }) => id === effect.study)?.rows ?? []
  const arm = (subgroup: string): Arm => {
    const row = rows.find(
      (one) => one.outcome === outcome && one.species === species && one.unit === unit && one.subgroup === subgroup,
    )
    if (row?.counted.kind !== 'count') throw new Error(`${effect.study} has no count of ${outcome} for ${subgroup}.`)
    return { events: row.counted.events, total: row.counted.total }
  }
  const arms = { with: arm(effect.with), without: arm(effect.without) }
  const cells = [arms.with, arms.without].flatMap(({ events, total }) => [events, total - events])
  if (cells.includes(0)) return null
  const [a = 0, b = 0, c = 0, d = 0] = cells
  const log = Math.log(a) - Math.log(b) - Math.log(c) + Math.log(d)
  const se = Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d)
  const interval = { low: Math.exp(log - z * se), high: Math.exp(log + z * se) }
  return { value: Math.exp(log), interval, log, se, from: 'worked-out', arms }
}

/**
 * What is known of the share when a circumstance changes its odds: added on the log odds scale, with the uncertainty of
 * the ratio. It reads the share as that of animals without the circumstance, which makes it a little too strong.
 *
 * @example modified(distribution, { log: Math.log(2.22), se: 0.46 }).mean
 */
export function modified(
  distribution: ShareDistribution,
  { log, se }: Pick<OddsRatio, 'log' | 'se'>,
): { readonly mean: number; readonly interval: Interval } {
  const { quantile, above } = summaryOf(distribution)
  // Equal steps of probability: the mean of a share over them needs few.
  const shares = Array.from({ length: 400 }, (_, i) => logit(quantile((i + 0.5) / 400)))
  const spread = (logit(quantile(0.84)) - logit(quantile(0.16))) / 2
  // Steps of the ratio closer than the share is wide: otherwise their sum would be a staircase.
  const nodes = normalNodes(Math.max(33, Math.ceil((30 * se) / spread)))
  const below = (logOdds: number) =>
    nodes.reduce((sum, [node, weight]) => sum + weight * (1 - above(expit(logOdds - log - se * node))), 0)
  const at = (probability: number) => {
    let low = logit(quantile(0.0001)) + log - 8 * se
    let high = logit(quantile(0.9999)) + log + 8 * se
    while (high - low > 1e-7) {
      const middle = (low + high) / 2
      if (below(middle) < probability) low = middle
      else high = middle
    }
    return expit((low + high) / 2)
  }
  const mean = shares.reduce(
    (sum, share) => sum + nodes.reduce((one, [node, w]) => one + w * expit(share + log + se * node), 0),
    0,
  )
  return { mean: mean / shares.length, interval: { low: at(0.025), high: at(0.975) } }
}

/** A standard normal in equal steps from −5 to 5; the trapezoid is exact to many digits for so smooth a thing. */
function normalNodes(count: number): readonly (readonly [node: number, weight: number])[] {
  const nodes = Array.from({ length: count }, (_, i) => -5 + (10 * i) / (count - 1))
  const heights = nodes.map((node) => Math.exp((-node * node) / 2))
  const sum = heights.reduce((all, height) => all + height, 0)
  return nodes.map((node, i) => [node, (heights[i] ?? 0) / sum] as const)
}
