import type { Temporal } from 'temporal-polyfill'
import type { Drug } from '#core/formulary/drug.ts'
import type { Group, Use } from '#core/formulary/words.ts'
import { Decimal, plain, Quantity, ratio, scale } from '#core/units/quantity.ts'
import { hoursBetween } from './elapsed.ts'
import { type DoseFinding, found } from './findings.ts'
import type { DosedAnimal } from './request.ts'
import type { Band, DosingRules, WeightRules } from './rules.ts'

/**
 * Everything that is odd about a weight: missing, impossible, old, estimated, pounds written as kilograms,
 * a slipped decimal point, or simply much changed.
 *
 * @example judgeWeight({ species: 'dog', conditions: [] }, undefined, rules)[0].code // 'weight-unknown'
 */
export function judgeWeight(animal: DosedAnimal, at: Temporal.Instant | undefined, rules: WeightRules): DoseFinding[] {
  if (!animal.weight) return [found('block', 'weight-unknown')]
  return [
    ...plausible(animal, animal.weight, rules),
    ...age(animal, at, rules),
    ...(animal.previousWeight ? change(animal.weight, animal.previousWeight, rules) : []),
  ]
}

function plausible(animal: DosedAnimal, weight: Quantity<'kg'>, rules: WeightRules): DoseFinding[] {
  const { usual, possible } = rules.plausible[animal.species].value
  const about = { weight: weight.toString(), species: animal.species }
  const from = [rules.plausible[animal.species]]
  if (weight.value.lt(possible.low.value) || weight.value.gt(possible.high.value)) {
    const limits = { ...about, low: possible.low.toString(), high: possible.high.toString() }
    if (!animal.weightConfirmed) return [found('block', 'weight-impossible', limits, from)]
    const { by, reason } = animal.weightConfirmed
    return [found('confirm', 'weight-confirmed-by-person', { ...limits, by, reason }, from)]
  }
  if (weight.value.lt(usual.low.value) || weight.value.gt(usual.high.value)) {
    return [found('note', 'weight-unusual', { ...about, low: usual.low.toString(), high: usual.high.toString() }, from)]
  }
  return []
}

function age(animal: DosedAnimal, at: Temporal.Instant | undefined, rules: WeightRules): DoseFinding[] {
  const findings: DoseFinding[] = []
  if (animal.weightIs === 'estimated') findings.push(found('confirm', 'weight-estimated'))
  if (!animal.weighedAt || !at) {
    findings.push(found('note', 'weight-age-unknown', { hours: plain(rules.olderThan.value.value) }, [rules.olderThan]))
    return findings
  }
  const hours = hoursBetween(animal.weighedAt, at)
  if (hours.value.lt(0)) {
    const about = { hours: plain(hours.value.abs().toDecimalPlaces(1)) }
    return [...findings, found('confirm', 'weight-from-later', about, [rules.olderThan])]
  }
  if (hours.value.gt(rules.olderThan.value.value)) {
    const about = { hours: plain(hours.value.toDecimalPlaces(0)), limit: plain(rules.olderThan.value.value) }
    findings.push(found('confirm', 'weight-old', about, [rules.olderThan]))
  }
  return findings
}

/** An age at which ordinary doses deserve a second look; an age that nobody stated is said where it matters. */
/** A thin animal: nothing is taken off its weight, and every dose begins low. */
export function judgeThin({ bodyCondition }: DosedAnimal, { thinUpTo }: Pick<DosingRules, 'thinUpTo'>): DoseFinding[] {
  if (bodyCondition === undefined || bodyCondition > thinUpTo.value) return []
  return [found('note', 'thin-start-low', { score: String(bodyCondition) }, [thinUpTo])]
}

export function judgeAge({ ageMonths }: DosedAnimal, { ordinaryAge }: Pick<DosingRules, 'ordinaryAge'>): DoseFinding[] {
  if (ageMonths === undefined) return []
  const { fromMonths, toYears } = ordinaryAge.value
  if (ageMonths < fromMonths) return [found('note', 'age-very-young', { age: String(ageMonths) }, [ordinaryAge])]
  const years = Math.floor(ageMonths / 12)
  // Ten years and a month are over ten years.
  if (ageMonths <= toYears * 12) return []
  return [found('note', 'age-old', { age: String(years) }, [ordinaryAge])]
}

function change(now: Quantity<'kg'>, before: Quantity<'kg'>, rules: WeightRules): DoseFinding[] {
  const factor = ratio(now, before)
  const percent = factor.minus(1).times(100).toDecimalPlaces(0)
  const about = {
    now: now.toString(),
    before: before.toString(),
    factor: plain(factor.toDecimalPlaces(2)),
    percent: plain(percent.abs()),
  }
  if (rules.pounds.value.some((band) => within(factor, band))) {
    return [found('confirm', 'weight-pounds-suspected', about, [rules.pounds])]
  }
  if (rules.decimalSlip.value.some((band) => within(factor, band))) {
    return [found('confirm', 'weight-decimal-slip', about, [rules.decimalSlip])]
  }
  const share = factor.minus(1).abs()
  if (share.gt(rules.changed.value.confirm)) return [found('confirm', 'weight-changed-much', about, [rules.changed])]
  if (share.gt(rules.changed.value.note)) return [found('note', 'weight-changed', about, [rules.changed])]
  return []
}

function within(factor: Decimal, band: Band): boolean {
  return factor.gte(band.low) && factor.lte(band.high)
}

/**
 * Whether this drug in this use is counted on lean weight in a fat animal.
 *
 * @example usesLeanWeight(fentanyl, 'cri', rules) // true; as a single injection false
 */
export function usesLeanWeight(
  { groups }: Drug,
  use: Use,
  rules: Pick<DosingRules, 'leanWeightGroups' | 'leanWeightInfusions'>,
): boolean {
  const inAny = (listed: readonly Group[]) => groups.some((group) => listed.includes(group))
  return inAny(rules.leanWeightGroups.value) || (use === 'cri' && inAny(rules.leanWeightInfusions.value))
}

/**
 * The weight that ceilings and lean-weight drugs are counted on: the estimated lean weight of a fat animal,
 * otherwise the measured weight. W ÷ (1 + share × (score − 5)).
 *
 * @example leanWeight(quantity('12', 'kg'), 7, rules) // 10 kg at 0.1 per point
 */
export function leanWeight(
  weight: Quantity<'kg'>,
  bodyCondition: number | undefined,
  rules: Pick<WeightRules, 'lean'>,
): Quantity<'kg'> {
  const { from, sharePerPoint } = rules.lean.value
  if (bodyCondition === undefined || bodyCondition < from) return weight
  const lean = scale(weight, new Decimal(1).div(sharePerPoint.times(bodyCondition - 5).plus(1)))
  // An estimate is written to ten grams, downwards.
  return new Quantity(lean.value.toDecimalPlaces(2, Decimal.ROUND_DOWN), 'kg')
}

/** Whether this drug is dosed somewhere between the lean and the measured weight of a fat animal. */
export function isBetweenWeights({ groups }: Drug, { betweenWeights }: Pick<DosingRules, 'betweenWeights'>): boolean {
  return groups.some((group) => betweenWeights.value.includes(group))
}
