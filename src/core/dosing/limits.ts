import type { Dose, DoseRow, Drug } from '#core/formulary/drug.ts'
import { type AnyQuantity, convert, Decimal, plain, Quantity } from '#core/units/quantity.ts'
import { stillCounts } from './elapsed.ts'
import { countedGiven } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import { isGivenDrug } from './given-drug.ts'
import type { Counted, DoseRequest, PlannedAmount } from './request.ts'

/**
 * The most of one dose, in the unit of its amount: the row's single maximum, whether it is written per kilogram
 * (then it scales like the dose) or as an amount; the lower one when it is written both ways. Undefined when the row
 * knows none.
 *
 * @example mostOf(row, quantity('0.2', 'mg/kg'), quantity('2', 'mg')) // 2 mg when the maximum is 0.2 mg/kg
 */
export function mostOf(row: DoseRow, dose: Dose, amount: AnyQuantity): AnyQuantity | undefined {
  const { limit, also } = row.maxSingle?.value ?? {}
  if (!limit) return undefined
  const first = oneLimit(limit, dose, amount)
  const second = also && oneLimit(also, dose, amount)
  return second?.value.lt(first.value) ? second : first
}

function oneLimit(limit: AnyQuantity, dose: Dose, amount: AnyQuantity): AnyQuantity {
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
  const whole = daily && mostOf({ ...row, maxSingle: { ...row.range, value: { limit: daily } } }, dose, amount)
  const share = whole && (new Quantity(whole.value.div(perDay(row).least), whole.unit) as AnyQuantity)
  if (!single || !share) return single ?? share
  return single.value.lt(share.value) ? single : share
}

export function judgeSingle(drug: string, row: DoseRow, dose: Dose, amount: AnyQuantity): DoseFinding[] {
  const most = mostOf(row, dose, amount)
  if (!most || !row.maxSingle || amount.value.lte(most.value)) return []
  const { limit, also, words } = row.maxSingle.value
  const about = {
    drug,
    amount: `${plain(amount.value.toSignificantDigits(6))} ${amount.unit}`,
    most: `${plain(most.value.toSignificantDigits(6))} ${most.unit}`,
    limit: [limit, also].filter(Boolean).join(' and ') + (words ? ` (${words})` : ''),
  }
  return [found('block', 'over-single-maximum', about, [row.maxSingle])]
}

/**
 * The sum of one day: what was given in the last 24 hours and what is planned, against the row's daily maximum.
 * A regular course counts as often as its interval says. With an interval of two ends the longest gap must fit, and
 * a shortest gap that would not fit asks for a person. On the emergency sheet the maximum is told and bars nothing.
 */
export function judgeDay(
  mine: PlannedAmount,
  planned: readonly PlannedAmount[],
  request: DoseRequest,
  weight: Quantity<'kg'>,
  drugs: readonly Drug[],
): DoseFinding[] {
  const most = mine.row.maxCumulative
  if (most?.value.per !== 'day' || !most.value.limit) return judgeOnePerInterval(mine, planned, weight)
  const limit = limitOf(most.value.limit, weight)
  const { unit } = limit
  const day = new Quantity(new Decimal(24), 'h')
  const given = request.given
    .filter((entry) => isGivenDrug(drugs, entry.drug, mine.drug.id) && stillCounts(entry.at, request.at, day))
    .map((entry) => countedGiven(entry, unit))
  const same = planned.filter((entry) => entry.drug.id === mine.drug.id)
  const uncounted = given.some((sum) => sum === undefined) || same.some(({ amount }) => amount.unit !== unit)
  const before = given.reduce<Decimal>((total, sum) => (sum ? total.plus(sum) : total), new Decimal(0))
  const sumAt = (end: 'least' | 'most') =>
    same.reduce((total, entry) => total.plus(entry.amount.value.times(perDay(entry.row)[end])), before)
  const about = {
    drug: mine.drug.name,
    most: `${plain(limit.value.toSignificantDigits(6))} ${unit}`,
    words: most.value.words,
  }
  const least = sumAt('least')
  if (uncounted || least.gt(limit.value)) {
    const sum = uncounted ? 'an amount that nobody wrote down' : `${plain(least.toSignificantDigits(6))} ${unit}`
    const level = mine.row.use === 'emergency' ? 'note' : most.value.asks ? 'confirm' : 'block'
    return [found(level, 'over-daily-maximum', { ...about, sum }, [most])]
  }
  if (mine.perHour) {
    const left = limit.value.minus(least).div(mine.perHour).times(60).floor()
    const inTime = { ...about, after: `${plain(left)} min` }
    return [found('confirm', 'over-daily-maximum-in-time', inTime, [most])]
  }
  const highest = sumAt('most')
  if (highest.lte(limit.value)) return []
  const closest = {
    ...about,
    interval: mine.row.interval.value.words,
    sum: `${plain(highest.toSignificantDigits(6))} ${unit}`,
  }
  return [found('confirm', 'over-daily-maximum-at-shortest', closest, [most, mine.row.interval])]
}

/** Whether the sum of the day cannot be judged without a weight, even for a dose counted per animal. */
export function hasDailyLimitPerKilogram({ maxCumulative }: DoseRow): boolean {
  const { per, limit } = maxCumulative?.value ?? {}
  return per === 'day' && limit !== undefined && (convert(limit, 'mg/kg') ?? convert(limit, 'mL/kg')) !== undefined
}

/**
 * The label of an NSAID gives one dose in its interval: two lines of one row are one dose written twice, and together
 * they may not pass its single maximum.
 */
function judgeOnePerInterval(
  mine: PlannedAmount,
  planned: readonly PlannedAmount[],
  weight: Quantity<'kg'>,
): DoseFinding[] {
  const most = mine.row.maxSingle
  const same = planned.filter((entry) => entry.row === mine.row)
  if (!most || !mine.drug.groups.includes('nsaid') || same.length < 2) return []
  const limit = limitOf(most.value.limit, weight)
  const sum = same.reduce((total, entry) => total.plus(entry.amount.value), new Decimal(0))
  if (sum.lte(limit.value)) return []
  const about = {
    drug: mine.drug.name,
    sum: `${plain(sum.toSignificantDigits(6))} mg`,
    most: `${plain(limit.value.toSignificantDigits(6))} mg`,
    words: `one dose, ${mine.row.interval.value.words}`,
  }
  return [found('block', 'over-daily-maximum', about, [most, mine.row.interval])]
}

export function limitOf(limit: AnyQuantity, weight: Quantity<'kg'>): Counted {
  const mass = convert(limit, 'mg/kg')
  if (mass) return new Quantity(mass.value.times(weight.value), 'mg')
  const volume = convert(limit, 'mL/kg')
  if (volume) return new Quantity(volume.value.times(weight.value), 'mL')
  const counted = convert(limit, 'mg') ?? convert(limit, 'mL')
  if (!counted) throw new Error(`A daily maximum in ${limit.unit} cannot be counted.`)
  return counted
}

/** How many doses a day holds at the longest and at the shortest gap; once when the gap cannot be counted. */
function perDay(row: DoseRow): { readonly least: Decimal; readonly most: Decimal } {
  const [shortest, longest] = row.interval.value.hours ?? ['24', '24']
  const times = (hours: string) => Decimal.max(1, new Decimal(24).div(hours))
  return { least: times(longest), most: times(shortest) }
}
