import { logGamma, rootTwoPi } from './special-functions.ts'

/**
 * ln of the beta function B(a, b). With large shapes the three gammas would cancel all but a few digits; there their
 * series are subtracted before anything is rounded (Stirling; the terms are those of Abramowitz & Stegun 6.1.41).
 *
 * @example logBeta(1, 2) // ln(1/2)
 */
export function logBeta(a: number, b: number): number {
  const [small, large] = a < b ? [a, b] : [b, a]
  if (large < 10) return logGamma(a) + logGamma(b) - logGamma(a + b)
  const rest = beyondStirling(large) - beyondStirling(a + b)
  const share = small / (a + b)
  if (small < 10) {
    return logGamma(small) + rest + small - small * Math.log(a + b) + (large - 0.5) * Math.log1p(-share)
  }
  const both = beyondStirling(small) + rest - 0.5 * Math.log(large) + Math.log(rootTwoPi)
  return both + (small - 0.5) * Math.log(share) + large * Math.log1p(-share)
}

/** What Stirling's formula leaves out of ln Γ, from ten on. */
function beyondStirling(x: number): number {
  const s = 1 / (x * x)
  return (1 / 12 - s * (1 / 360 - s * (1 / 1260 - s * (1 / 1680 - s * (1 / 1188 - (s * 691) / 360360))))) / x
}

/**
 * The probability that a Beta(a, b) share lies below x; with `tail` 'upper' that it lies above, asked for directly
 * because 1 − p loses the digits of a small tail. Continued fraction (Abramowitz & Stegun 26.5.8) after Lentz; about
 * ten digits for shapes up to a million.
 *
 * @example betaBelow(0.5, { a: 2, b: 2 }) // 0.5
 */
export function betaBelow(
  x: number,
  { a, b }: { readonly a: number; readonly b: number },
  tail: 'lower' | 'upper' = 'lower',
): number {
  if (x <= 0 || x >= 1) return x <= 0 === (tail === 'lower') ? 0 : 1
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta(a, b))
  const fromBelow = x < (a + 1) / (a + b + 2)
  const part = fromBelow ? (front * fraction(x, a, b)) / a : (front * fraction(1 - x, b, a)) / b
  return fromBelow === (tail === 'lower') ? part : 1 - part
}

function fraction(x: number, a: number, b: number): number {
  const nearNothing = 1e-300
  let c = 1
  let d = 1 / away(1 - ((a + b) * x) / (a + 1), nearNothing)
  let value = d
  for (let m = 1; m < 100_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / away(1 + even * d, nearNothing)
    c = away(1 + even / c, nearNothing)
    value *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / away(1 + odd * d, nearNothing)
    c = away(1 + odd / c, nearNothing)
    value *= d * c
    if (Math.abs(d * c - 1) < 1e-16) return value
    if (m > 20_000 && Math.abs(d * c - 1) < 1e-12) return value
  }
  throw new Error(`The incomplete beta function at ${x} for (${a}, ${b}) did not settle.`)
}

function away(value: number, least: number): number {
  return Math.abs(value) < least ? least : value
}
