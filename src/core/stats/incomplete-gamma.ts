import { logGamma, normalQuantile } from './special-functions.ts'

/**
 * The probability that a χ² value with so many degrees of freedom lies above x, asked for directly: 1 − p would lose the
 * digits of a small tail. Series below, continued fraction above (Abramowitz & Stegun 6.5.29 and 6.5.31).
 *
 * @example chiSquareAbove(3.841458820694124, 1) // 0.05
 */
export function chiSquareAbove(x: number, degrees: number): number {
  if (x <= 0) return 1
  const half = x / 2
  const shape = degrees / 2
  return half < shape + 1 ? 1 - series(half, shape) : fraction(half, shape)
}

/** The density of the same. */
function chiSquareDensity(x: number, degrees: number): number {
  const shape = degrees / 2
  return 0.5 * Math.exp((shape - 1) * Math.log(x / 2) - x / 2 - logGamma(shape))
}

/**
 * The χ² value that leaves the given probability below it: Wilson and Hilferty's start, then Newton steps on the logarithm.
 *
 * @example chiSquareQuantile(0.95, 1) // 3.841458820694124
 */
export function chiSquareQuantile(probability: number, degrees: number): number {
  const spread = 2 / (9 * degrees)
  const cube = 1 - spread + normalQuantile(probability) * Math.sqrt(spread)
  // Far in the lower tail the start would be negative; there the distribution function is a power.
  const power = 2 * Math.exp((Math.log(probability) + logGamma(degrees / 2 + 1)) / (degrees / 2))
  let at = Math.max(degrees * cube ** 3, cube < 0.3 ? power : 1e-12)
  for (let round = 0; round < 60; round += 1) {
    const off = 1 - chiSquareAbove(at, degrees) - probability
    const step = off / (chiSquareDensity(at, degrees) * at)
    at *= Math.exp(-Math.max(-1, Math.min(1, step)))
    if (Math.abs(step) < 1e-14) break
  }
  return at
}

function front(x: number, shape: number): number {
  return Math.exp(shape * Math.log(x) - x - logGamma(shape))
}

function series(x: number, shape: number): number {
  let term = 1 / shape
  let sum = term
  for (let n = 1; n < 100_000; n += 1) {
    term *= x / (shape + n)
    sum += term
    if (term < 1e-17 * sum) break
  }
  return sum * front(x, shape)
}

function fraction(x: number, shape: number): number {
  let b = x + 1 - shape
  let c = 1e300
  let d = 1 / b
  let value = d
  for (let n = 1; n < 100_000; n += 1) {
    const a = -n * (n - shape)
    b += 2
    d = 1 / (a * d + b)
    c = b + a / c
    value *= d * c
    if (Math.abs(d * c - 1) < 1e-16) break
  }
  return value * front(x, shape)
}
