import type { Watched } from './cusum.ts'

/** After each case: how many fewer had it than expected, and between what it would lie by chance alone. */
export type ExpectedLessObserved = {
  readonly value: number
  readonly expected: number
  readonly observed: number
  readonly deviation: number
  /** At this case alone. The whole line leaves such limits far more often than one time in twenty. */
  readonly low: number
  readonly high: number
}

/**
 * The running sum of expected minus observed (variable life-adjusted display), with exact limits at every case: events
 * of unlike risks add up to a Poisson-binomial number.
 *
 * @example expectedLessObserved(cases).at(-1)?.value // −6.58: so many more than expected
 * Reference: Lovegrove et al., Lancet 1997;350:1128–1130 (remembered); limits by convolution.
 */
export function expectedLessObserved(cases: readonly Watched[], confidence = 0.95): ExpectedLessObserved[] {
  const tail = (1 - confidence) / 2
  const room = noneYet(cases.length)
  let [expected, observed, variance] = [0, 0, 0]
  return cases.map(({ risk, event }, before) => {
    addOne(room, before, risk)
    const chances = room.subarray(0, before + 2)
    expected += risk
    observed += event ? 1 : 0
    variance += risk * (1 - risk)
    return {
      value: expected - observed,
      expected,
      observed,
      deviation: Math.sqrt(variance),
      low: expected - quantileOf(chances, 1 - tail),
      high: expected - quantileOf(chances, tail),
    }
  })
}

/**
 * The chance of 0, 1, … events among cases of unlike risks.
 *
 * @example poissonBinomial([0.1, 0.5]) // 0.45, 0.5, 0.05
 */
export function poissonBinomial(risks: readonly number[]): Float64Array {
  const chances = noneYet(risks.length)
  risks.forEach((risk, before) => {
    addOne(chances, before, risk)
  })
  return chances
}

/** Before the first case no event is certain; there is room for as many as there are cases. */
function noneYet(cases: number): Float64Array {
  const chances = new Float64Array(cases + 1)
  chances[0] = 1
  return chances
}

/** One case more after so many, in place: from the top down each place still holds what it was before this case. */
function addOne(chances: Float64Array, before: number, risk: number): void {
  for (let events = before + 1; events > 0; events -= 1)
    chances[events] = (chances[events - 1] ?? 0) * risk + (chances[events] ?? 0) * (1 - risk)
  chances[0] = (chances[0] ?? 0) * (1 - risk)
}

/** The smallest number that is not passed with at least this probability. */
function quantileOf(chances: Float64Array, probability: number): number {
  let below = 0
  for (let events = 0; events < chances.length; events += 1) {
    below += chances[events] ?? 0
    if (below >= probability) return events
  }
  return chances.length - 1
}
