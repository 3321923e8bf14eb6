import { logWays } from '../log-ways.ts'
import { expit, log1pExp, logit } from '../logistic.ts'
import type { Count } from '../proportion-interval.ts'
import { logitEffect } from './effects.ts'
import { inverseVariance } from './inverse-variance.ts'
import { addStudy, type Evidence } from './study-integral.ts'

/** The most likely mu and tau of the binomial-normal model. */
export type BinomialNormal = {
  readonly mu: number
  /** From the observed information of mu and tau together. */
  readonly se: number
  readonly tau: number
  /** No spread between studies can be seen; the fit is that of one common proportion. */
  readonly boundary: boolean
  readonly logLikelihood: number
}

/**
 * Random effects without a correction for empty cells: events ~ Bin(total, expit θ), θ ~ N(mu, tau²), both by maximum
 * likelihood (Hamza et al., J Clin Epidemiol 2008;61:41–51; Stijnen et al., Stat Med 2010;29:3046–3067).
 *
 * @returns nothing when no study or every case had the event: the most likely mu is then infinite.
 * @example binomialNormal([{ events: 7, total: 52 }, { events: 3, total: 33 }])
 */
export function binomialNormal(counts: readonly Count[]): BinomialNormal | undefined {
  const events = counts.reduce((sum, count) => sum + count.events, 0)
  const total = counts.reduce((sum, count) => sum + count.total, 0)
  if (events === 0 || events === total) return undefined
  const common = commonShare(counts, events / total)
  if (counts.length < 2 || counts.every((count) => count.total === 1)) return common
  const ways = counts.reduce((sum, count) => sum + logWays(count), 0)
  const evidence = evidenceFor(counts)
  const fit = fewStarts(counts, evidence, common.mu) ?? manyStarts(counts, evidence, common)
  if (!fit || fit.sums.log + ways <= common.logLikelihood) return common
  const { mu, tau, sums } = fit
  const determinant = sums.muMu * sums.tauTau - sums.muTau * sums.muTau
  return { mu, se: Math.sqrt(-sums.tauTau / determinant), tau, boundary: false, logLikelihood: sums.log + ways }
}

/** From so many studies on, with a likelihood that rises from tau = 0, one start by moments is enough. */
const manyStudies = 30

function fewStarts(counts: readonly Count[], evidence: EvidenceAt, mu: number): Fit | undefined {
  if (counts.length < manyStudies || !(riseAtZero(counts, mu) > 0)) return undefined
  const { mean, tau2 } = inverseVariance(counts.map(logitEffect), 'DL')
  const fit = climb(evidence, mean, Math.max(0.1, Math.sqrt(tau2)))
  const { muMu, tauTau, muTau } = fit.sums
  return fit.tau > 1e-3 && muMu < 0 && muMu * tauTau > muTau * muTau ? fit : undefined
}

/** The best of a row of spreads, then uphill from there; nothing when none is better than no spread at all. */
function manyStarts(counts: readonly Count[], evidence: EvidenceAt, common: BinomialNormal): Fit | undefined {
  const ways = counts.reduce((sum, count) => sum + logWays(count), 0)
  let best = { mu: common.mu, tau: 0, log: common.logLikelihood - ways }
  for (const tau of startsFor(counts, common.mu)) {
    const found = muFor(evidence, tau, best.mu)
    if (found.log > best.log + 1e-12) best = { mu: found.mu, tau, log: found.log }
  }
  return best.tau === 0 ? undefined : climb(evidence, best.mu, best.tau)
}

/** One proportion for all: what is left at tau = 0. */
function commonShare(counts: readonly Count[], share: number): BinomialNormal {
  const mu = logit(share)
  const total = counts.reduce((sum, count) => sum + count.total, 0)
  const log = counts.reduce((sum, count) => sum + logWays(count) + count.events * mu - count.total * log1pExp(mu), 0)
  return { mu, se: 1 / Math.sqrt(total * share * (1 - share)), tau: 0, boundary: true, logLikelihood: log }
}

/** Twice the slope of the likelihood in tau² at tau = 0. In tau itself it is even, so its slope is always 0 there. */
function riseAtZero(counts: readonly Count[], mu: number): number {
  const share = expit(mu)
  return counts.reduce((sum, { events, total }) => sum + (events - total * share) ** 2 - total * share * (1 - share), 0)
}

/** Small starts only where the likelihood rises from tau = 0. */
function startsFor(counts: readonly Count[], mu: number): readonly number[] {
  return [...(riseAtZero(counts, mu) > 0 ? [0.004, 0.015] : []), 0.05, 0.15, 0.3, 0.6, 1, 1.6, 2.5, 4, 7]
}

type Fit = { readonly mu: number; readonly tau: number; readonly sums: Evidence }
type EvidenceAt = (mu: number, tau: number) => Evidence

function evidenceFor(counts: readonly Count[]): EvidenceAt {
  const peaks = new Float64Array(counts.length)
  return (mu, tau) => {
    const sums: Evidence = { log: 0, mu: 0, tau: 0, muMu: 0, muTau: 0, tauTau: 0 }
    counts.forEach((count, index) => {
      peaks[index] = addStudy(count, mu, tau, peaks[index] ?? 0, sums)
    })
    return sums
  }
}

/** The most likely mu for one tau, near enough to choose a start. */
function muFor(evidence: EvidenceAt, tau: number, start: number): { readonly mu: number; readonly log: number } {
  let mu = start
  let sums = evidence(mu, tau)
  for (let round = 0; round < 8; round += 1) {
    const step = Math.max(-2, Math.min(2, -sums.mu / sums.muMu))
    mu += step
    sums = evidence(mu, tau)
    if (Math.abs(step) < 1e-3) break
  }
  return { mu, log: sums.log }
}

/** Newton steps in mu and tau together, shortened until they climb. A step of 1e-7 leaves an error of about its square. */
function climb(evidence: EvidenceAt, startMu: number, startTau: number): Fit {
  let mu = startMu
  let tau = startTau
  let sums = evidence(mu, tau)
  for (let round = 0; round < 100; round += 1) {
    const [stepMu, stepTau] = newtonStep(sums)
    let part = Math.min(1, 0.5 / Math.max(1e-300, Math.abs(stepMu)), (0.6 * tau) / Math.max(1e-300, Math.abs(stepTau)))
    let next = evidence(mu + part * stepMu, tau + part * stepTau)
    while (next.log < sums.log - 1e-12 * Math.abs(sums.log) && part > 1e-6) {
      part /= 2
      next = evidence(mu + part * stepMu, tau + part * stepTau)
    }
    mu += part * stepMu
    tau += part * stepTau
    sums = next
    if (Math.abs(part * stepMu) < 1e-7 && Math.abs(part * stepTau) < 1e-7) break
  }
  return { mu, tau, sums }
}

/** Where the likelihood is not bent downwards in every direction, each parameter goes uphill by itself. */
function newtonStep({ mu, tau, muMu, muTau, tauTau }: Evidence): readonly [number, number] {
  const determinant = muMu * tauTau - muTau * muTau
  if (muMu < 0 && determinant > 0) {
    return [(-tauTau * mu + muTau * tau) / determinant, (muTau * mu - muMu * tau) / determinant]
  }
  return [mu / Math.max(1e-12, Math.abs(muMu)), tau / Math.max(1e-12, Math.abs(tauTau))]
}
