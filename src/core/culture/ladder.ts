/**
 * The doubling ladder of dilutions. Rung n is 2 to the n mg/L; a set of rungs is everything that a printed value can
 * mean. Names of one rung are the same dilution (0.12 and 0.125), and a value between two rungs counts as the upper one:
 * both as the instructions of gradient strips and both standards have it.
 */
export type Rung = number
export type Rungs = { readonly from: Rung; readonly to: Rung }

/** Far below and above every end of a category: "or lower" and "or higher" end here. */
export const lowestRung: Rung = -14
export const highestRung: Rung = 14

/** Rungs below 1 are printed shortened, each house in its own way. */
const shortened: readonly (readonly [Rung, readonly string[]])[] = [
  [-1, ['0.5']],
  [-2, ['0.25']],
  [-3, ['0.12', '0.125', '0.13']],
  [-4, ['0.06', '0.0625', '0.062', '0.063', '0.064']],
  [-5, ['0.03', '0.03125', '0.0313', '0.031', '0.032']],
  [-6, ['0.015', '0.015625', '0.0156', '0.016']],
  [-7, ['0.008', '0.0078125', '0.0078']],
  [-8, ['0.004', '0.00390625', '0.0039']],
  [-9, ['0.002', '0.001953125', '0.00195']],
  [-10, ['0.001', '0.0009765625', '0.00098']],
]
const names: readonly (readonly [Rung, readonly string[]])[] = [
  ...shortened,
  ...Array.from({ length: highestRung + 1 }, (_, rung) => [rung, [String(2 ** rung)]] as const),
].sort(([one], [other]) => one - other)

/** The greatest number that still is this rung, and the least. */
const spans = names.map(([rung, written]) => {
  const numbers = written.map(Number)
  return { rung, least: Math.min(...numbers), most: Math.max(...numbers) }
})

export type OnLadder = {
  readonly rung: Rung /** False for a value between two rungs, which was taken upwards. */
  readonly exact: boolean
}

/**
 * Where a decimal text in mg/L stands on the ladder; null above its top and for what is no concentration.
 *
 * @example onLadder('0.125') // { rung: -3, exact: true }
 * @example onLadder('0.38') // { rung: -1, exact: false }
 */
export function onLadder(amount: string): OnLadder | null {
  const value = Number(amount)
  if (!(value > 0)) return null
  const span = spans.find(({ most }) => value <= most)
  if (!span) return null
  return { rung: span.rung, exact: value >= span.least }
}

/** The usual name of a rung. */
export function rungName(rung: Rung): string {
  const name = names.find(([one]) => one === rung)?.[1][0]
  return name ?? String(2 ** rung)
}

export type Sign = '=' | '<=' | '<' | '>=' | '>'

/**
 * Everything that a printed MIC can be. `<` a rung is the rung below or lower, `>` the rung above or higher; of a value
 * between two rungs the upper one stays possible either way.
 *
 * @example rungsOf('<', '1') // { from: lowestRung, to: -1 }
 */
export function rungsOf(sign: Sign, amount: string): Rungs | null {
  const place = onLadder(amount)
  if (!place) return null
  const { rung, exact } = place
  switch (sign) {
    case '=':
      return { from: rung, to: rung }
    case '<=':
      return { from: lowestRung, to: rung }
    case '<':
      return { from: lowestRung, to: exact ? Math.max(rung - 1, lowestRung) : rung }
    case '>=':
      return { from: rung, to: highestRung }
    case '>':
      return { from: exact ? Math.min(rung + 1, highestRung) : rung, to: highestRung }
  }
}
