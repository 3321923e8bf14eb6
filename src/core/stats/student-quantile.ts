import { betaQuantile } from './special-functions.ts'

/**
 * The value that a Student t with so many degrees of freedom exceeds with the probability of one tail.
 *
 * @example studentQuantile(0.025, 6) // 2.446911851
 */
export function studentQuantile(tail: number, degrees: number): number {
  const share = betaQuantile(2 * tail, { a: degrees / 2, b: 0.5 })
  return Math.sqrt((degrees * (1 - share)) / share)
}
