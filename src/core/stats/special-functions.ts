import betaincinv from '@stdlib/math-base-special-betaincinv'
import erfcinv from '@stdlib/math-base-special-erfcinv'
import gammaln from '@stdlib/math-base-special-gammaln'

/** √(2π): what a normal density is divided by. */
export const rootTwoPi = 2.5066282746310002

/**
 * The point below which a standard normal value falls with the given probability.
 * Through the inverse complementary error function, because the usual ready-made quantile fails below 1e-6.
 *
 * @example normalQuantile(0.975) // 1.959963984540054
 */
export function normalQuantile(probability: number): number {
  return probability < 0.5 ? -Math.SQRT2 * erfcinv(2 * probability) : Math.SQRT2 * erfcinv(2 * (1 - probability))
}

/** Which tail holds the probability. An upper tail is asked for directly: 1 − p loses digits. */
export type Tail = 'lower' | 'upper'

/**
 * The point of a Beta(a, b) distribution that leaves the given probability in one tail.
 *
 * @example betaQuantile(0.975, { a: 4, b: 17 }) // 0.3789268265…
 */
export function betaQuantile(probability: number, shape: { a: number; b: number }, tail: Tail = 'lower'): number {
  return betaincinv(probability, shape.a, shape.b, tail === 'upper')
}

/**
 * Natural logarithm of the gamma function.
 *
 * @example logGamma(10) // ln(9!) = 12.8018…
 */
export function logGamma(x: number): number {
  return gammaln(x)
}
