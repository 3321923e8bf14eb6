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
  let chances: Float64Array = Float64Array.of(1)
  let [expected, observed, variance] = [0, 0, 0]
  return cases.map(({ risk, event }) => {
    chances = withOneMore(chances, risk)
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
  return risks.reduce<Float64Array>(withOneMore, Float64Array.of(1))
}

function withOneMore(chances: Float64Array, risk: number): Float64Array {
  const next = new Float64Array(chances.length + 1)
  chances.forEach((chance, events) => {
    next[events] = (next[events] ?? 0) + chance * (1 - risk)
    next[events + 1] = (next[events + 1] ?? 0) + chance * risk
  })
  return next
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
