/** One operation in its order: the risk it had beforehand, strictly between 0 and 1 in use, and whether the event came. */
export type Watched = { readonly risk: number; readonly event: boolean }

/**
 * The score of one operation in a risk-adjusted log-likelihood chart: how much it speaks for odds that are `ratio` times
 * those expected, against those expected.
 *
 * @param ratio above 1 to look for worse results, below 1 for better ones
 * @example cusumScore({ risk: 0.1, event: true }, 2) // 0.598
 * Reference: Steiner, Cook, Farewell & Treasure, Biostatistics 2000;1:441–452 (abstract read, formula remembered).
 */
export function cusumScore({ risk, event }: Watched, ratio: number): number {
  const shifted = Math.log(1 - risk + ratio * risk)
  return event ? Math.log(ratio) - shifted : -shifted
}

/**
 * The chart: the sum of scores, never below nought. It signals where it reaches the limit; it is not set back here.
 *
 * @example cusumPath(operations, { ratio: 2, limit: 2.5 }).signals
 */
export function cusumPath(
  operations: readonly Watched[],
  { ratio, limit }: CusumDesign,
): { readonly path: readonly number[]; readonly signals: readonly number[] } {
  let now = 0
  const path = operations.map((operation) => {
    now = Math.max(0, now + cusumScore(operation, ratio))
    return now
  })
  return { path, signals: path.flatMap((value, at) => (value >= limit ? [at] : [])) }
}

export type CusumDesign = { readonly ratio: number; readonly limit: number }

/**
 * How likely the chart signals within so many operations of one constant risk, exactly: with the odds as expected (a false
 * alarm), or with odds that are `odds` times as high.
 *
 * @example signalWithin(50, 0.1, { ratio: 2, limit: 2.5 }) // 0.0666
 * Reference: recursion over events and non-events since the chart last stood at nought; own derivation.
 */
export function signalWithin(operations: number, risk: number, design: CusumDesign, odds = 1): number {
  const hit = cusumScore({ risk, event: true }, design.ratio)
  const miss = cusumScore({ risk, event: false }, design.ratio)
  const real = (odds * risk) / (1 - risk + odds * risk)
  // Where the chart stands follows from both counts since nought; so equal ways are added, not told apart by rounding.
  let standing = new Map<string, State>([['0 0', { events: 0, others: 0, chance: 1 }]])
  let signalled = 0
  for (let done = 0; done < operations; done += 1) {
    const next = new Map<string, State>()
    for (const { events, others, chance } of standing.values()) {
      for (const [more, probability] of [
        [1, real],
        [0, 1 - real],
      ] as const) {
        const state = { events: events + more, others: others + 1 - more }
        const value = state.events * hit + state.others * miss
        if (value >= design.limit) signalled += chance * probability
        else add(next, value <= 0 ? { events: 0, others: 0 } : state, chance * probability)
      }
    }
    standing = next
  }
  return signalled
}

type State = { readonly events: number; readonly others: number; readonly chance: number }

function add(states: Map<string, State>, { events, others }: Omit<State, 'chance'>, chance: number): void {
  const key = `${events} ${others}`
  states.set(key, { events, others, chance: chance + (states.get(key)?.chance ?? 0) })
}
