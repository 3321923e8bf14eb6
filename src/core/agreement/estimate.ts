import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { Decimal } from '#core/units/quantity.ts'
import type { Money } from './money.ts'

export type Estimate = BodyOf<'estimate'>

export const estimateFaults = [
  'mixed-currencies',
  'low-over-high',
  'ceiling-under-low',
  'deposit-over-ceiling',
] as const
export type EstimateFault = (typeof estimateFaults)[number]

/**
 * What the lines come to, exactly. Two currencies in one estimate have no sum.
 *
 * @example totalsOf(estimate) // { kind: 'answer', answer: { low: { amount: '2040.50', currency: 'GBP' }, high: … } }
 * Reference: the job of the estimate, low to high by line against an accepted ceiling.
 */
export function totalsOf({
  lines,
  ceiling,
}: Pick<Estimate, 'lines' | 'ceiling'>): Outcome<{ readonly low: Money; readonly high: Money }, 'mixed-currencies'> {
  const { currency } = ceiling
  const all = lines.flatMap(({ low, high }) => [low, high])
  if (all.some((money) => money.currency !== currency)) return refuse('mixed-currencies')
  return answer({
    low: sum(
      lines.map(({ low }) => low),
      currency,
    ),
    high: sum(
      lines.map(({ high }) => high),
      currency,
    ),
  })
}

/** With as many places as the most exact line has: `2040.50`, never `2040.5`. */
function sum(some: readonly Money[], currency: string): Money {
  const parts = some.map(({ amount }) => new Decimal(amount))
  const places = Math.max(...some.map(({ amount }) => amount.split('.')[1]?.length ?? 0))
  return { amount: parts.reduce((total, part) => total.plus(part), new Decimal(0)).toFixed(places), currency }
}

/**
 * What does not fit together in an estimate; an empty list when it does.
 *
 * @example faultsOf({ ...estimate, ceiling: { amount: '100.00', currency: 'GBP' } }) // ['ceiling-under-low', …]
 */
export function faultsOf(estimate: Estimate): EstimateFault[] {
  const { lines, deposit, ceiling } = estimate
  const totals = totalsOf(estimate)
  if (totals.kind === 'refusal' || (deposit && deposit.currency !== ceiling.currency)) return ['mixed-currencies']
  return [
    ...(lines.some(({ low, high }) => over(low, high)) ? ['low-over-high' as const] : []),
    ...(over(totals.answer.low, ceiling) ? ['ceiling-under-low' as const] : []),
    ...(deposit && over(deposit, ceiling) ? ['deposit-over-ceiling' as const] : []),
  ]
}

function over(one: Money, other: Money): boolean {
  return new Decimal(one.amount).greaterThan(other.amount)
}

/** The newest edition, whether it was answered or not. Example: `newestEstimate(theCase)?.body.edition // 2`. */
export function newestEstimate(theCase: Case): Line<Estimate> | undefined {
  return [...theCase.live('estimate')].sort((a, b) => a.body.edition - b.body.edition).at(-1)
}
