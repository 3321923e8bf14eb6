/**
 * The derivative of ln Γ: raised by its recurrence to where the asymptotic series holds.
 *
 * @example digamma(1) // −0.5772156649…, minus Euler's constant
 */
export function digamma(x: number): number {
  let at = x
  let sum = 0
  while (at < 8) {
    sum -= 1 / at
    at += 1
  }
  const s = 1 / (at * at)
  const series = s * (1 / 12 - s * (1 / 120 - s * (1 / 252 - s * (1 / 240 - s * (1 / 132 - (s * 691) / 32760)))))
  return sum + Math.log(at) - 0.5 / at - series
}

/**
 * The derivative of digamma.
 *
 * @example trigamma(1) // 1.6449340668…, π²/6
 */
export function trigamma(x: number): number {
  let at = x
  let sum = 0
  while (at < 8) {
    sum += 1 / (at * at)
    at += 1
  }
  const s = 1 / (at * at)
  const series = 1 / 6 - s * (1 / 30 - s * (1 / 42 - s * (1 / 30 - s * (5 / 66 - (s * 691) / 2730))))
  return sum + 1 / at + 0.5 * s + (series * s) / at
}
