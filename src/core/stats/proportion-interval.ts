import { answer, type Outcome, refuse } from '../outcome/outcome.ts'
import { betaQuantile, normalQuantile } from './special-functions.ts'

/** So many events among so many counted. */
export type Count = { readonly events: number; readonly total: number }
export type Interval = { readonly low: number; readonly high: number }
export type NoCasesYet = { readonly because: 'no-cases-yet' }

/**
 * The exact interval for a proportion (Clopper & Pearson, Biometrika 1934;26:404–413).
 * It never covers less than it claims, and is therefore wide.
 *
 * @example exactInterval({ events: 81, total: 309 }) // 0.214–0.315
 */
export function exactInterval(count: Count, confidence = 0.95): Outcome<Interval, NoCasesYet> {
  return whenCounted(count, confidence, (tail) => {
    const { events, total } = count
    return {
      low: betaQuantile(tail, { a: events, b: total - events + 1 }),
      high: betaQuantile(tail, { a: events + 1, b: total - events }, 'upper'),
    }
  })
}

/**
 * The score interval (Wilson, J Am Stat Assoc 1927;22:209–212), without continuity correction.
 *
 * @example wilsonInterval({ events: 13, total: 120 }) // 0.064–0.177
 */
export function wilsonInterval(count: Count, confidence = 0.95): Outcome<Interval, NoCasesYet> {
  return whenCounted(count, confidence, (tail) => {
    const { events, total } = count
    return scoreInterval(events / total, total, tail)
  })
}

/**
 * The score interval of a share over so many, which need not be whole where a sample is worth fewer than it counts.
 *
 * @param tail the chance left out on either side, 0.025 for 95 %
 */
export function scoreInterval(share: number, size: number, tail: number): Interval {
  const z = normalQuantile(tail)
  const shrink = 1 + (z * z) / size
  const centre = (share + (z * z) / (2 * size)) / shrink
  const half = (Math.abs(z) * Math.sqrt((share * (1 - share)) / size + (z * z) / (4 * size * size))) / shrink
  return { low: centre - half, high: centre + half }
}

/**
 * The Jeffreys interval in its boundary form (Brown, Cai & DasGupta, Stat Sci 2001;16:101–133).
 *
 * @example jeffreysInterval({ events: 0, total: 10 }) // 0–0.217
 */
export function jeffreysInterval(count: Count, confidence = 0.95): Outcome<Interval, NoCasesYet> {
  return whenCounted(count, confidence, (tail) => {
    const shape = { a: count.events + 0.5, b: count.total - count.events + 0.5 }
    return { low: betaQuantile(tail, shape), high: betaQuantile(tail, shape, 'upper') }
  })
}

/**
 * The exact one-sided upper bound: the highest true share that would still show so few events now and then.
 * A one-sided statement; never print it beside two-sided intervals.
 *
 * @example upperBound({ events: 0, total: 46 }) // 0.063
 */
export function upperBound(count: Count, confidence = 0.95): Outcome<number, NoCasesYet> {
  checkCount(count)
  const { events, total } = count
  if (total === 0) return refuse({ because: 'no-cases-yet' })
  if (events === total) return answer(1)
  // With no event the bound has a closed form; expm1 keeps the digits that 1 − x would lose.
  if (events === 0) return answer(-Math.expm1(Math.log(1 - confidence) / total))
  return answer(betaQuantile(1 - confidence, { a: events + 1, b: total - events }, 'upper'))
}

/**
 * How many cases without a single event it takes to exclude a rate so high, one-sided; the same number shows at least one
 * event with that confidence when the rate is true (Hanley & Lippman-Hand, J Am Med Assoc 1983;249:1743–1745).
 *
 * @example eventFreeCases(0.05) // 59
 */
export function eventFreeCases(rate: number, confidence = 0.95): number {
  if (!(rate > 0 && rate < 1)) throw new Error(`A rate lies between 0 and 1, not ${rate}.`)
  return Math.ceil(Math.log1p(-confidence) / Math.log1p(-rate))
}

/** Ends are exactly 0 without an event and exactly 1 when all had it; rounding must not say otherwise. */
function whenCounted(
  count: Count,
  confidence: number,
  ends: (tail: number) => Interval,
): Outcome<Interval, NoCasesYet> {
  checkCount(count)
  if (!(confidence > 0 && confidence < 1)) throw new Error(`A confidence lies between 0 and 1, not ${confidence}.`)
  if (count.total === 0) return refuse({ because: 'no-cases-yet' })
  const { low, high } = ends((1 - confidence) / 2)
  return answer({ low: count.events === 0 ? 0 : low, high: count.events === count.total ? 1 : high })
}

/** A count that cannot be is a bug of the caller: input is parsed at the door. */
export function checkCount({ events, total }: Count): void {
  const whole = Number.isSafeInteger(events) && Number.isSafeInteger(total)
  if (!whole || events < 0 || events > total) throw new Error(`${events} of ${total} is not a count.`)
}
