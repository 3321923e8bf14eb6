import type { BodyOf } from '#core/journal/fold.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { Decimal } from '#core/units/quantity.ts'

export type CostLine = BodyOf<'cost-assumption'>['lines'][number]
type Money = NonNullable<CostLine['price']>['low']
export type Span = { readonly low: Money; readonly high: Money }

export type YearOfCost = {
  /** What comes so many times in the year; null where nothing does. */
  readonly once: Span | null
  /** What comes again every month; null where nothing does. */
  readonly month: Span | null
  readonly year: Span
}

export type CostRefusal =
  | { readonly because: 'no-lines' }
  /** No price is kept for these: what the whole comes to is unknown. */
  | { readonly because: 'no-price'; readonly what: readonly string[] }
  | { readonly because: 'mixed-currencies' }
  | { readonly because: 'low-over-high'; readonly what: string }

const monthsInYear = 12

/**
 * What a year of one option may cost, low to high, exactly, at the clinic's own prices. Without every price there is no
 * sum: a part of it would be read as the whole.
 *
 * @example costOfYear([{ what: 'Check', atLeast: 4, atMost: 8, every: 'year', price }]) // 160.00 to 480.00 GBP
 * Reference: the estimate of this house, low to high by line, added up without rounding.
 */
export function costOfYear(lines: readonly CostLine[]): Outcome<YearOfCost, CostRefusal> {
  const [first] = lines
  if (!first) return refuse({ because: 'no-lines' })
  const unpriced = lines.filter(({ price }) => price === null).map(({ what }) => what)
  if (unpriced.length > 0) return refuse({ because: 'no-price', what: unpriced })
  const backwards = lines.find(isBackwards)
  if (backwards) return refuse({ because: 'low-over-high', what: backwards.what })
  const priced = lines.flatMap(({ price, ...line }) => (price ? [{ ...line, price }] : []))
  const all = priced.flatMap(({ price }) => [price.low, price.high])
  const [{ currency }] = [all[0] as Money]
  if (all.some((money) => money.currency !== currency)) return refuse({ because: 'mixed-currencies' })
  const places = Math.max(...all.map(({ amount }) => amount.split('.')[1]?.length ?? 0))
  const say = (value: Decimal): Money => ({ amount: value.toFixed(places), currency })
  const sums = (every: CostLine['every']) => {
    const own = priced.filter((line) => line.every === every)
    const times = (of: 'low' | 'high') =>
      own.reduce(
        (sum, { price, atLeast, atMost }) =>
          sum.plus(new Decimal(price[of].amount).times(of === 'low' ? atLeast : atMost)),
        new Decimal(0),
      )
    return own.length === 0 ? null : { low: times('low'), high: times('high') }
  }
  const [once, month] = [sums('year'), sums('month')]
  const whole = (of: 'low' | 'high') =>
    (once?.[of] ?? new Decimal(0)).plus((month?.[of] ?? new Decimal(0)).times(monthsInYear))
  return answer({
    once: once && { low: say(once.low), high: say(once.high) },
    month: month && { low: say(month.low), high: say(month.high) },
    year: { low: say(whole('low')), high: say(whole('high')) },
  })
}

function isBackwards({ atLeast, atMost, price }: CostLine): boolean {
  return atLeast > atMost || (price !== null && new Decimal(price.low.amount).gt(price.high.amount))
}
