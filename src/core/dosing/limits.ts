import type { Dose, DoseRow, Drug } from '#core/formulary/drug.ts'
import { type AnyQuantity, convert, Decimal, plain, Quantity } from '#core/units/quantity.ts'
import { stillCounts } from './elapsed.ts'
import { massGiven } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import { isGivenDrug } from './given-drug.ts'
import type { DoseRequest } from './request.ts'

/**
 * The most of one dose, in the unit of its amount: the row's single maximum, whether it is written per kilogram
 * (then it scales like the dose) or as an amount. Undefined when the row knows none.
 *
 * @example mostOf(row, quantity('0.2', 'mg/kg'), quantity('2', 'mg')) // 2 mg when the maximum is 0.2 mg/kg
 */
export function mostOf(row: DoseRow, dose: Dose, amount: AnyQuantity): AnyQuantity | undefined {
  const limit = row.maxSingle?.value.limit
  if (!limit) return undefined
  const asDose = convert(limit, dose.unit)
  if (asDose) return new Quantity(amount.value.times(asDose.value).div(dose.value), amount.unit) as AnyQuantity
  const asAmount = convert(limit, amount.unit)
  if (asAmount) return asAmount as AnyQuantity
  throw new Error(`A maximum in ${limit.unit} cannot be held against ${amount.unit}.`)
}

/**
 * The most that rounding may reach: the single maximum, and one dose's share of a daily maximum.
 * A planned dose already over it was refused before anything is rounded.
 */
export function roundingCeiling(row: DoseRow, dose: Dose, amount: AnyQuantity): AnyQuantity | undefined {
  const single = mostOf(row, dose, amount)
  const daily = row.maxCumulative?.value.per === 'day' ? row.maxCumulative.value.limit : undefined
  const share = daily && mostOf({ ...row, maxSingle: { ...row.range, value: { limit: daily } } }, dose, amount)
  if (!single || !share) return single ?? share
  return single.value.lt(share.value) ? single : share
}

export function judgeSingle(drug: string, row: DoseRow, dose: Dose, amount: AnyQuantity): DoseFinding[] {
  const most = mostOf(row, dose, amount)
  if (!most || !row.maxSingle || amount.value.lte(most.value)) return []
  const words = row.maxSingle.value.words
  const about = {
    drug,
    amount: amount.toString(),
    most: `${plain(most.value.toSignificantDigits(6))} ${most.unit}`,
    limit: row.maxSingle.value.limit.toString() + (words ? ` (${words})` : ''),
  }
  return [found('block', 'over-single-maximum', about, [row.maxSingle])]
}

/** One planned dose of a drug, for the sum of the day. */
export type PlannedMass = {
  readonly line: string
  readonly drug: Drug
  readonly row: DoseRow
  readonly mass: Quantity<'mg'>
}

/**
 * The sum of one day: what was given in the last 24 hours and what is planned, against the row's daily maximum.
 * A regular course counts as often as its interval says; an interval with two ends counts once.
 */
export function judgeDay(
  mine: PlannedMass,
  planned: readonly PlannedMass[],
  request: DoseRequest,
  weight: Quantity<'kg'>,
  drugs: readonly Drug[],
): DoseFinding[] {
  const most = mine.row.maxCumulative
  if (most?.value.per !== 'day' || !most.value.limit) return []
  const limit = massLimit(most.value.limit, weight)
  const day = new Quantity(new Decimal(24), 'h')
  const given = request.given
    .filter((entry) => isGivenDrug(drugs, entry.drug, mine.drug.id) && stillCounts(entry.at, request.at, day))
    .map((entry) => massGiven(entry)?.value)
  const uncounted = given.some((mass) => mass === undefined)
  const sum = [
    ...given.filter((mass) => mass !== undefined),
    ...planned
      .filter((entry) => entry.drug.id === mine.drug.id)
      .map((entry) => entry.mass.value.times(perDay(entry.row))),
  ].reduce((total, mass) => total.plus(mass), new Decimal(0))
  if (!uncounted && sum.lte(limit.value)) return []
  const about = {
    drug: mine.drug.name,
    sum: uncounted ? 'an amount that nobody wrote down' : `${plain(sum.toSignificantDigits(6))} mg`,
    most: `${plain(limit.value.toSignificantDigits(6))} mg`,
    words: most.value.words,
  }
  return [found('block', 'over-daily-maximum', about, [most])]
}

function massLimit(limit: AnyQuantity, weight: Quantity<'kg'>): Quantity<'mg'> {
  const perWeight = convert(limit, 'mg/kg')
  if (perWeight) return new Quantity(perWeight.value.times(weight.value), 'mg')
  const mass = convert(limit, 'mg')
  if (!mass) throw new Error(`A daily maximum in ${limit.unit} cannot be counted.`)
  return mass
}

function perDay(row: DoseRow): Decimal {
  const [shortest, longest] = row.interval.value.hours ?? []
  return shortest !== undefined && shortest === longest ? new Decimal(24).div(shortest) : new Decimal(1)
}
