import { type ExactP, exactP, exactTest, poissonChances } from './exact-chances.ts'
import { chiSquareQuantile } from './incomplete-gamma.ts'
import { exactInterval, type Interval } from './proportion-interval.ts'
import { normalQuantile } from './special-functions.ts'

/** So many events in so much exposure: animal-months, or the number that was expected. */
export type Exposed = { readonly events: number; readonly exposure: number }

/** Events per unit of exposure. */
export type Rate = { readonly rate: number; readonly interval: Interval; readonly againstOne: ExactP }

/**
 * A rate with its exact interval, and how likely so many would be where one per unit is expected.
 *
 * @example poissonRate({ events: 10, exposure: 12.5 }) // 0.8, from 0.384 to 1.471
 * Reference: Garwood, Biometrika 1936;28:437–442 (remembered).
 */
export function poissonRate({ events, exposure }: Exposed, confidence = 0.95): Rate {
  checkExposed({ events, exposure })
  const tail = (1 - confidence) / 2
  return {
    rate: events / exposure,
    interval: {
      low: events === 0 ? 0 : gammaQuantile(tail, events) / exposure,
      high: gammaQuantile(1 - tail, events + 1) / exposure,
    },
    againstOne: exactP(poissonChances(exposure, events), events),
  }
}

/**
 * The ratio of two rates, exactly, given how many events there were altogether.
 *
 * @returns the ratio of the first to the second, its interval, and the two-sided p; an end may be infinite
 * @example rateRatio({ events: 11, exposure: 800 }, { events: 3, exposure: 610 }) // 2.80, from 0.74 to 15.6
 * Reference: given the sum the first is binomial; the interval is that of Clopper and Pearson turned into a ratio.
 */
export function rateRatio(first: Exposed, second: Exposed, confidence = 0.95) {
  checkExposed(first)
  checkExposed(second)
  const count = { events: first.events, total: first.events + second.events }
  const share = exactInterval(count, confidence)
  const turned = (part: number) => (part === 1 ? Infinity : ((part / (1 - part)) * second.exposure) / first.exposure)
  return {
    ratio: first.events / first.exposure / (second.events / second.exposure),
    interval:
      share.kind === 'refusal'
        ? { low: 0, high: Infinity }
        : { low: turned(share.answer.low), high: turned(share.answer.high) },
    p: exactTest(count, first.exposure / (first.exposure + second.exposure)).twoSided,
  }
}

/**
 * Observed over expected, with the exact Poisson interval and Byar's approximation beside it. Careful rather than sharp
 * where risks are not small: a sum of yes and no spreads less than Poisson says.
 *
 * @example observedOverExpected(13, 6.42).ratio // 2.02, from 1.08 to 3.46
 * Reference: Garwood 1936; Byar's approximation as in Breslow & Day 1987 (remembered).
 */
export function observedOverExpected(observed: number, expected: number, confidence = 0.95) {
  const { rate, interval, againstOne } = poissonRate({ events: observed, exposure: expected }, confidence)
  const z = normalQuantile((1 + confidence) / 2)
  const byar = (events: number, sign: 1 | -1) =>
    (events / expected) * (1 - 1 / (9 * events) + (sign * z) / (3 * Math.sqrt(events))) ** 3
  return {
    ratio: rate,
    interval,
    byar: { low: observed === 0 ? 0 : byar(observed, -1), high: byar(observed + 1, 1) },
    p: againstOne.twoSided,
  }
}

/** The quantile of a gamma distribution with rate one, by that of χ² with twice the degrees. */
function gammaQuantile(probability: number, shape: number): number {
  return chiSquareQuantile(probability, 2 * shape) / 2
}

function checkExposed({ events, exposure }: Exposed): void {
  const fine = Number.isSafeInteger(events) && events >= 0 && Number.isFinite(exposure) && exposure > 0
  if (!fine) throw new Error(`${events} events in an exposure of ${exposure} cannot be counted.`)
}
