import { logWays } from './log-ways.ts'
import type { Count } from './proportion-interval.ts'
import { logGamma } from './special-functions.ts'

/** How likely so many or more, so many or fewer, and something at most as likely as this, on either side. */
export type ExactP = { readonly twoSided: number; readonly less: number; readonly greater: number }

/** Outcomes that are equally likely on paper differ by rounding; the usual programs take them as equal within this. */
const tie = 1 + 1e-7

/**
 * The exact p of one observed number among all that could have been. Either tail is added up by itself, never as the rest
 * of the other one, which would lose the digits of a small tail. Two-sided: everything at most as likely as what was seen.
 *
 * @param chances the chance of 0, 1, 2, …; they add up to one
 * @example exactP(binomialChances(20, 0.1), 3).greater // 0.3231
 */
export function exactP(chances: ArrayLike<number>, observed: number): ExactP {
  const here = (chances[observed] ?? 0) * tie
  let [twoSided, less, greater] = [0, 0, 0]
  for (let number = 0; number < chances.length; number += 1) {
    const chance = chances[number] ?? 0
    if (chance <= here) twoSided += chance
    if (number <= observed) less += chance
    if (number >= observed) greater += chance
  }
  return { twoSided: Math.min(1, twoSided), less: Math.min(1, less), greater: Math.min(1, greater) }
}

/**
 * The chance of 0, 1, … up to all events among so many cases of one and the same risk.
 *
 * @example binomialChances(2, 0.5) // 0.25, 0.5, 0.25
 */
export function binomialChances(total: number, risk: number): Float64Array {
  const chances = new Float64Array(total + 1)
  for (let events = 0; events <= total; events += 1) {
    const sure = (events === 0 || risk > 0) && (events === total || risk < 1)
    const log = sure ? timesLog(events, Math.log(risk)) + timesLog(total - events, Math.log1p(-risk)) : -Infinity
    chances[events] = Math.exp(logWays({ events, total }) + log)
  }
  return chances
}

/**
 * The chance of 0, 1, … events where so many are expected (Poisson), as far as any chance is worth adding, and at least
 * as far as `atLeast`.
 *
 * @example poissonChances(3)[0] // e⁻³
 */
export function poissonChances(expected: number, atLeast = 0): Float64Array {
  const last = Math.max(atLeast, Math.ceil(expected + 40 * Math.sqrt(expected) + 60))
  return Float64Array.from({ length: last + 1 }, (_, events) =>
    Math.exp(timesLog(events, Math.log(expected)) - expected - logGamma(events + 1)),
  )
}

/**
 * Tests one share against a fixed one, exactly.
 *
 * @example exactTest({ events: 9, total: 20 }, 0.25).twoSided // 0.0652
 */
export function exactTest({ events, total }: Count, share: number): ExactP {
  return exactP(binomialChances(total, share), events)
}

/** Nought of something impossible is possible: 0 · ln 0 is 0 here. */
function timesLog(times: number, log: number): number {
  return times === 0 ? 0 : times * log
}
