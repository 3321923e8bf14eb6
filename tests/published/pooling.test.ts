/** Pooled proportions beside R (data/pooling.json): metafor, and the project's own converged binomial-normal fit. */
import { describe, expect, it } from 'vitest'
import { expit } from '#core/stats/logistic.ts'
import { binomialNormal } from '#core/stats/pooling/binomial-normal.ts'
import { doubleArcsine, fromDoubleArcsine, harmonicMean } from '#core/stats/pooling/double-arcsine.ts'
import { logitEffect, typicalVariance, weightedMean } from '#core/stats/pooling/effects.ts'
import { inverseVariance } from '#core/stats/pooling/inverse-variance.ts'
import { tauSquared, tauSquaredInterval } from '#core/stats/pooling/tau-squared.ts'
import { normalQuantile } from '#core/stats/special-functions.ts'
import { studentQuantile } from '#core/stats/student-quantile.ts'
import reference from './data/pooling.json' with { type: 'json' }

const { tolerance } = reference
const z = normalQuantile(0.975)

/** Within `limit` of the value itself; below 1e-12 the reference counts as zero. */
function near(value: number, wanted: number | null | undefined, limit: number): void {
  if (typeof wanted !== 'number') throw new Error(`The reference holds ${String(wanted)}.`)
  const off = Math.abs(value - wanted)
  const allowed = Math.max(limit * Math.abs(wanted), Math.abs(wanted) < 1e-12 ? 1e-12 : 0)
  expect(off, `${value} instead of ${wanted}`).toBeLessThanOrEqual(allowed)
}

function within(value: number, wanted: number | null | undefined, limit: number): void {
  expect(Math.abs(value - Number(wanted)), `${value} instead of ${String(wanted)}`).toBeLessThanOrEqual(limit)
}

/** What follows from tau² is as exact as tau² is. */
const fromTau2 = tolerance.tau2

it('holds all 14 reference cases', () => {
  expect(reference.cases).toHaveLength(14)
})

describe.each(reference.cases)('$id', (row) => {
  const counts = row.events.map((events, index) => ({ events, total: row.totals[index] ?? Number.NaN }))
  const effects = counts.map(logitEffect)

  it('log odds and double arcsine of every study', () => {
    effects.forEach(({ at, variance }, index) => {
      near(at, row.study.logit[index], tolerance.inverseVariance)
      near(variance, row.study.v[index], tolerance.inverseVariance)
    })
    counts.map(doubleArcsine).forEach(({ at, variance }, index) => {
      near(at, row.study.ft[index], tolerance.inverseVariance)
      near(variance, row.study.ft_v[index], tolerance.inverseVariance)
    })
  })

  it('Q, its probability, I² and the common mean', () => {
    const found = inverseVariance(effects, 'REML')
    if (counts.length > 1) {
      near(found.q, row.reml_logit.Q, tolerance.inverseVariance)
      near(found.qP, row.reml_logit.Q_p, 1e-9)
      within(100 * found.i2, row.reml_logit.I2, 100 * fromTau2)
      if ('I2_from_Q' in row && typeof row.I2_from_Q === 'number') {
        within(100 * found.i2FromQ, row.I2_from_Q, 1e-9)
      }
    }
    within(found.mean, row.reml_logit.mu, fromTau2)
    within(found.se, row.reml_logit.se, fromTau2)
    within(found.tau2, row.reml_logit.tau2, tolerance.tau2)
    within(expit(found.mean - z * found.se), row.reml_logit.ci_p[0], fromTau2)
    within(expit(found.mean + z * found.se), row.reml_logit.ci_p[1], fromTau2)
  })

  it('DerSimonian-Laird, Paule-Mandel and full likelihood', () => {
    if (!('dl_logit' in row) || !row.dl_logit || !row.pm_logit || !row.ml_logit) return
    const byMoments = inverseVariance(effects, 'DL')
    near(byMoments.tau2, row.dl_logit.tau2, tolerance.inverseVariance)
    near(byMoments.mean, row.dl_logit.mu, tolerance.inverseVariance)
    near(byMoments.se, row.dl_logit.se, tolerance.inverseVariance)
    within(tauSquared(effects, 'PM'), row.pm_logit.tau2, tolerance.tau2)
    within(tauSquared(effects, 'ML'), row.ml_logit.tau2, tolerance.tau2)
    within(inverseVariance(effects, 'ML').mean, row.ml_logit.mu, fromTau2)
  })

  it('the limits of tau² and of I²', () => {
    if (!('tau2_ci_qprofile' in row.reml_logit)) return
    const { low, high } = tauSquaredInterval(effects)
    const [wantedLow, wantedHigh] = row.reml_logit.tau2_ci_qprofile ?? []
    near(low, wantedLow, tolerance.profileRelative)
    near(high, wantedHigh, tolerance.profileRelative)
    const typical = typicalVariance(effects)
    near((100 * high) / (high + typical), row.reml_logit.I2_ci_qprofile?.[1], tolerance.profileRelative)
  })

  it('the double arcsine, pooled and taken back by the harmonic mean', () => {
    const found = inverseVariance(counts.map(doubleArcsine), 'REML')
    const cases = harmonicMean(counts)
    const wanted = row.freeman_tukey
    within(found.mean, wanted.mu, fromTau2)
    within(found.se, wanted.se, fromTau2)
    within(found.tau2, wanted.tau2, tolerance.tau2)
    near(cases, wanted.harmonic_mean_n, tolerance.inverseVariance)
    within(fromDoubleArcsine(found.mean, cases), wanted.p_harmonic, fromTau2)
    within(fromDoubleArcsine(found.mean - z * found.se, cases), wanted.ci_p_harmonic[0], fromTau2)
    within(fromDoubleArcsine(found.mean + z * found.se, cases), wanted.ci_p_harmonic[1], fromTau2)
  })

  it('binomial-normal: mu, its error, tau, log-likelihood, interval and prediction', () => {
    const found = binomialNormal(counts)
    const wanted = row.glmm_exact
    expect(found !== undefined).toBe(wanted.estimable)
    if (!found || !('mu' in wanted) || !wanted.ci_z) return
    const limit = tolerance.binomialNormal
    expect(found.boundary).toBe(wanted.boundary)
    within(found.mu, wanted.mu, limit)
    within(found.se, wanted.se, limit)
    within(found.tau, wanted.tau, limit)
    within(found.logLikelihood, wanted.loglik, limit)
    within(expit(found.mu - z * found.se), wanted.ci_z.p[0], limit)
    within(expit(found.mu + z * found.se), wanted.ci_z.p[1], limit)
    if (wanted.pi_t_km2) {
      const half = studentQuantile(0.025, counts.length - 2) * Math.hypot(found.se, found.tau)
      within(found.mu - half, wanted.pi_t_km2.logit[0], 10 * limit)
      within(expit(found.mu + half), wanted.pi_t_km2.p[1], limit)
    }
  })

  it('each study left out in turn', () => {
    if (!('leave_one_out' in row) || !row.leave_one_out) return
    for (const wanted of row.leave_one_out) {
      const rest = counts.toSpliced(wanted.omit - 1, 1)
      const byVariance = inverseVariance(rest.map(logitEffect), 'REML')
      within(byVariance.mean, wanted.reml_mu, fromTau2)
      within(byVariance.se, wanted.reml_se, fromTau2)
      within(byVariance.tau2, wanted.reml_tau2, tolerance.tau2)
      near(byVariance.q, wanted.reml_Q, tolerance.inverseVariance)
      const byLikelihood = binomialNormal(rest)
      if (typeof wanted.glmm_mu !== 'number') {
        expect(byLikelihood).toBeUndefined()
        continue
      }
      within(byLikelihood?.mu ?? Number.NaN, wanted.glmm_mu, tolerance.binomialNormal)
      within(byLikelihood?.se ?? Number.NaN, wanted.glmm_se, tolerance.binomialNormal)
      within((byLikelihood?.tau ?? Number.NaN) ** 2, wanted.glmm_tau2, 10 * tolerance.binomialNormal)
    }
  })
})

it('the double arcsine depends on the number of cases it is taken back by: 0.8, 2.0 or 3.5 %', () => {
  const { input, output } = reference.backTransformTrap
  const counts = input.k.map((events, index) => ({ events, total: input.n[index] ?? Number.NaN }))
  const effects = counts.map(doubleArcsine)
  const { mean, tau2 } = inverseVariance(effects, 'REML')
  within(mean, output.mu, fromTau2)
  within(tau2, output.tau2, tolerance.tau2)
  within(fromDoubleArcsine(mean, harmonicMean(counts)), output.p_harmonic, fromTau2)
  within(fromDoubleArcsine(mean, Math.min(...input.n)), output.p_min_n, fromTau2)
  within(fromDoubleArcsine(mean, Math.max(...input.n)), output.p_max_n, fromTau2)
  const common = weightedMean(effects, 0).mean
  within(common, output.common_mu, tolerance.inverseVariance)
  expect(fromDoubleArcsine(common, harmonicMean(counts))).toBe(output.common_p_harmonic)
})
