import type { Count } from '../proportion-interval.ts'
import { rootTwoPi } from '../special-functions.ts'

/** Sums over studies: ln of the likelihood without the number of ways, its slopes and its bends in mu and tau. */
export type Evidence = {
  log: number
  mu: number
  tau: number
  muMu: number
  muTau: number
  tauTau: number
}

/**
 * Adds one study to the sums: ln ∫ Bin(events | total, expit(mu + tau·z)) φ(z) dz and its derivatives, by the trapezoid rule
 * about the highest point of the integrand. The step is held under 0.3/tau as well, because the integrand has poles at a
 * distance of π/tau from the real line (few Gauss-Hermite nodes are not exact, and one node is only Laplace's guess).
 *
 * @param start where the highest point may be; the one found is returned for the next call.
 */
export function addStudy({ events, total }: Count, mu: number, tau: number, start: number, sums: Evidence): number {
  const peak = highest(events, total, mu, tau, start)
  const share = 1 / (1 + Math.exp(-(mu + tau * peak)))
  const width = 1 / Math.sqrt(1 + tau * tau * total * share * (1 - share))
  const step = Math.min(width * 0.65, 0.3 / tau)
  const top = logHeight(events, total, mu, tau, peak)
  let all = 0
  let first = 0
  let firstZ = 0
  let second = 0
  let secondZ = 0
  let secondZz = 0
  const ratio = Math.exp(tau * step)
  for (let way = 1; way >= -1; way -= 2) {
    let z = way === 1 ? peak : peak - step
    // The odds go from node to node by one factor.
    let odds = Math.exp(mu + tau * z)
    const factor = way === 1 ? ratio : 1 / ratio
    for (;;) {
      const weight = Math.exp(events * (mu + tau * z) - total * Math.log1p(odds) - 0.5 * z * z - top)
      if (!(weight > 1e-15)) break
      const p = odds / (1 + odds)
      const rest = events - total * p
      const bend = weight * (rest * rest - total * p * (1 - p))
      all += weight
      first += weight * rest
      firstZ += weight * rest * z
      second += bend
      secondZ += bend * z
      secondZz += bend * z * z
      z += way * step
      odds *= factor
    }
  }
  const slope = first / all
  const slopeZ = firstZ / all
  sums.log += top + Math.log((all * step) / rootTwoPi)
  sums.mu += slope
  sums.tau += slopeZ
  sums.muMu += second / all - slope * slope
  sums.muTau += secondZ / all - slope * slopeZ
  sums.tauTau += secondZz / all - slopeZ * slopeZ
  return peak
}

function logHeight(events: number, total: number, mu: number, tau: number, z: number): number {
  const at = mu + tau * z
  return events * at - total * (Math.max(at, 0) + Math.log1p(Math.exp(-Math.abs(at)))) - 0.5 * z * z
}

/** The integrand is log-concave; Newton steps, none of them longer than 2 on the log odds scale. */
function highest(events: number, total: number, mu: number, tau: number, start: number): number {
  let z = start
  const longest = Math.min(4, 2 / tau)
  for (let round = 0; round < 200; round += 1) {
    const p = 1 / (1 + Math.exp(-(mu + tau * z)))
    const step = (tau * (events - total * p) - z) / (1 + tau * tau * total * p * (1 - p))
    z += Math.max(-longest, Math.min(longest, step))
    if (Math.abs(step) < 1e-2) break
  }
  return z
}
