/**
 * The share that belongs to a log odds.
 *
 * @example expit(0) // 0.5
 */
export function expit(logOdds: number): number {
  if (logOdds >= 0) return 1 / (1 + Math.exp(-logOdds))
  const odds = Math.exp(logOdds)
  return odds / (1 + odds)
}

/**
 * The log odds that belong to a share between 0 and 1.
 *
 * @example logit(0.5) // 0
 */
export function logit(share: number): number {
  return Math.log(share) - Math.log1p(-share)
}

/**
 * ln(1 + eˣ) without overflow: minus this is the logarithm of one non-event at log odds x.
 *
 * @example log1pExp(1000) // 1000
 */
export function log1pExp(x: number): number {
  return x > 0 ? x + Math.log1p(Math.exp(-x)) : Math.log1p(Math.exp(x))
}
