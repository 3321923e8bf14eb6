import type { BodyOf } from '#core/journal/fold.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { Decimal } from '#core/units/quantity.ts'
import type { Estimate } from './estimate.ts'
import type { Money } from './money.ts'

export type Cost = Pick<BodyOf<'cost-so-far'>, 'part' | 'amount' | 'finished'>

/** How near the ceiling is; anything but `within` asks for a call to the owner. */
export type Nearness = 'within' | 'ask' | 'may-pass' | 'will-pass' | 'passed'

export type Forecast = {
  readonly spent: Money
  /** What it comes to in the end: spent, and low to high of what is still to come. */
  readonly low: Money
  readonly high: Money
  readonly nearness: Nearness
}

/**
 * What was spent, and with what is still to come of the estimate, against the ceiling. Of a part that is finished nothing
 * more comes; of another the rest of its lines does. `askFrom` is the house's own figure, of 100 parts of the ceiling.
 *
 * @example forecastOf(estimate, costs, '80') // { kind: 'answer', answer: { spent: …, nearness: 'ask' } }
 */
export function forecastOf(
  { lines, ceiling }: Pick<Estimate, 'lines' | 'ceiling'>,
  costs: readonly Cost[],
  askFrom: string,
): Outcome<Forecast, 'mixed-currencies'> {
  const { currency } = ceiling
  const all = [...lines.flatMap(({ low, high }) => [low, high]), ...costs.map(({ amount }) => amount)]
  if (all.some((one) => one.currency !== currency)) return refuse('mixed-currencies')
  const parts = [...new Set(lines.map(({ part }) => part))]
  const spentOn = (part: Cost['part']) => sum(costs.filter((one) => one.part === part).map(({ amount }) => amount))
  const toCome = (end: 'low' | 'high') =>
    parts.reduce((total, part) => {
      if (costs.some((one) => one.part === part && one.finished)) return total
      const wanted = sum(lines.filter((line) => line.part === part).map((line) => line[end]))
      return total.plus(Decimal.max(wanted.minus(spentOn(part)), 0))
    }, new Decimal(0))
  const spent = sum(costs.map(({ amount }) => amount))
  const [low, high] = [spent.plus(toCome('low')), spent.plus(toCome('high'))]
  const places = Math.max(2, ...all.map(({ amount }) => amount.split('.')[1]?.length ?? 0))
  const money = (value: Decimal): Money => ({ amount: value.toFixed(places), currency })
  const limit = new Decimal(ceiling.amount)
  const nearness = nearnessOf({ spent, low, high, limit, from: limit.times(askFrom).dividedBy(100) })
  return answer({ spent: money(spent), low: money(low), high: money(high), nearness })
}

function nearnessOf(at: Readonly<Record<'spent' | 'low' | 'high' | 'limit' | 'from', Decimal>>): Nearness {
  if (at.spent.greaterThan(at.limit)) return 'passed'
  if (at.low.greaterThan(at.limit)) return 'will-pass'
  if (at.high.greaterThan(at.limit)) return 'may-pass'
  return at.spent.greaterThanOrEqualTo(at.from) ? 'ask' : 'within'
}

function sum(some: readonly Money[]): Decimal {
  return some.reduce((total, { amount }) => total.plus(amount), new Decimal(0))
}
