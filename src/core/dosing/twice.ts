import type { Use } from '#core/formulary/words.ts'
import { convert, type Decimal, plain, type Quantity } from '#core/units/quantity.ts'
import { kindOf } from './amount.ts'
import type { Draft } from './draft.ts'
import { stillCounts } from './elapsed.ts'
import { countedGiven, saidOf } from './exclusions.ts'
import { type DoseFinding, found } from './findings.ts'
import { isGivenDrug } from './given-drug.ts'
import { limitOf, mostOf } from './limits.ts'
import type { DoseRequest, DosingKnowledge, Given, PlannedAmount } from './request.ts'

/**
 * Uses whose doses are meant once. A block has the ceiling of the animal, an NSAID its label; what runs in, and what is
 * repeated by effect, is meant more than once.
 */
const meantOnce: ReadonlySet<Use> = new Set<Use>([
  'premed',
  'sedation',
  'anxiolytic',
  'anticholinergic',
  'analgesia_bolus',
  'analgesia_oral',
  'transdermal',
  'antibiotic_course',
  'steroid',
  'antiemetic',
  'antifibrinolytic',
  'gi_protectant',
  'antiparasitic',
])

/**
 * The same drug for the same use twice in one plan, or in a plan and among what was given on that day when its row has
 * no gap that can be counted: each line is inside its range, and both together are not what anybody chose.
 *
 * @example judgeTwice(acepromazine, amounts, request, weight, knowledge)[0]?.code // 'same-drug-twice'
 */
export function judgeTwice(
  mine: PlannedAmount,
  planned: readonly PlannedAmount[],
  request: DoseRequest,
  weight: Quantity<'kg'>,
  { drugs, rules }: Pick<DosingKnowledge, 'drugs' | 'rules'>,
): DoseFinding[] {
  const { drug, row } = mine
  if (!meantOnce.has(row.use)) return []
  const { unit } = mine.amount
  const others = planned.filter(
    (one) => one !== mine && one.drug.id === drug.id && one.row.use === row.use && one.amount.unit === unit,
  )
  // A gap that can be counted is judged against the clock (`judgeRepeat`).
  const given = row.interval.value.hours
    ? []
    : request.given.filter((one) => isOfThisDay(one, mine, request, drugs, rules))
  if (others.length === 0 && given.length === 0) return []
  const counted = [
    ...others.map(({ amount }) => amount.value),
    ...given.flatMap((one) => countedGiven(one, unit) ?? []),
  ]
  const sum = counted.reduce<Decimal>((total, value) => total.plus(value), mine.amount.value)
  const limit = row.maxSingle?.value.limit
  const isCountable = limit && [unit, `${unit}/kg` as const].some((word) => convert(limit, word))
  const most = isCountable ? limitOf(limit, weight) : undefined
  const shown = (value: Decimal) => `${plain(value.toSignificantDigits(6))} ${unit}`
  const about = {
    drug: drug.name,
    use: row.use.replaceAll('_', ' '),
    others: [...others.map(({ line, amount }) => `${shown(amount.value)} in line ${line}`), ...given.map(saidOf)].join(
      '; ',
    ),
    sum: shown(sum),
    most: most ? shown(most.value) : '',
  }
  const from = [row.interval, rules.repeat, ...(row.maxSingle ? [row.maxSingle] : [])]
  if (most && sum.gt(most.value)) return [found('confirm', 'same-drug-twice-over-maximum', about, from)]
  return [found('note', 'same-drug-twice', about, from)]
}

function isOfThisDay(
  given: Given,
  { drug }: PlannedAmount,
  { at }: DoseRequest,
  drugs: DosingKnowledge['drugs'],
  { repeat }: Pick<DosingKnowledge['rules'], 'repeat'>,
): boolean {
  return (
    given.use !== 'cri' && isGivenDrug(drugs, given.drug, drug.id) && stillCounts(given.at, at, repeat.value.onceWithin)
  )
}

/**
 * Two infusions of one drug run at once: each may be under the most of an hour, and both together over it. Potassium
 * in two bags stops a heart like potassium in one.
 *
 * @example judgeRunsTwice(first, drafts)[0]?.code // 'same-drug-twice-over-maximum' at twice 0.4 mmol/kg/h
 */
export function judgeRunsTwice(mine: Draft, drafts: readonly Draft[]): DoseFinding[] {
  const { drug, row, dose, amount } = mine
  if (!drug || !row || !dose || !amount || kindOf(dose) !== 'infusion-per-weight') return []
  const others = drafts.flatMap((one) => {
    const rate = one !== mine && one.drug?.id === drug.id && one.amount && convert(one.amount, amount.unit)
    return rate ? [{ line: one.line.id, rate: rate.value }] : []
  })
  if (others.length === 0) return []
  const sum = others.reduce<Decimal>((total, { rate }) => total.plus(rate), amount.value)
  const most = mostOf(row, dose, amount)
  const shown = (value: Decimal) => `${plain(value.toSignificantDigits(6))} ${amount.unit}`
  const about = {
    drug: drug.name,
    use: row.use.replaceAll('_', ' '),
    others: others.map(({ line, rate }) => `${shown(rate)} in line ${line}`).join('; '),
    sum: shown(sum),
    most: most ? shown(most.value) : '',
  }
  if (most && row.maxSingle && sum.gt(most.value)) {
    return [found('confirm', 'same-drug-twice-over-maximum', about, [row.maxSingle])]
  }
  return [found('note', 'same-drug-twice', about, [row.range])]
}
