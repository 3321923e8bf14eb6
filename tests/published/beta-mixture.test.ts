/** Operations on given mixtures of Betas beside R (data/beta-mixtures.json), the published one among them. */
import { describe, expect, it } from 'vitest'
import {
  type BetaMixture,
  mixtureExpectedCounts,
  mixtureSummary,
  probabilityGreater,
  updatedMixture,
} from '#core/stats/predictive/beta-mixture.ts'
import { mixtureSize } from '#core/stats/predictive/mixture-size.ts'
import type { ShareSummary } from '#core/stats/predictive/summary.ts'
import reference from './data/beta-mixtures.json' with { type: 'json' }

const { tolerance } = reference

function near(value: number, wanted: number, relative: number): void {
  expect(Math.abs(value / wanted - 1), `${value} instead of ${wanted}`).toBeLessThanOrEqual(relative)
}

type Raw = { readonly w: readonly number[]; readonly a: readonly number[]; readonly b: readonly number[] }
const mixtureFrom = ({ w, a, b }: Raw): BetaMixture =>
  w.map((weight, i) => ({ weight, a: a[i] ?? Number.NaN, b: b[i] ?? Number.NaN }))

type Wanted = { mean: number; sd: number; quantile_probs: number[]; quantiles: number[] }
function sameSummary(found: ShareSummary, wanted: Wanted): void {
  near(found.mean, wanted.mean, tolerance.summary)
  near(found.sd, wanted.sd, tolerance.summary)
  wanted.quantile_probs.forEach((probability, index) => {
    near(found.quantile(probability), wanted.quantiles[index] ?? Number.NaN, tolerance.summary)
  })
}

describe('the published mixture of two Betas', () => {
  const mixture = mixtureFrom(reference.published.input)
  const size = mixtureSize(mixture)

  it('has the mean, spread and quantiles of R', () => {
    sameSummary(mixtureSummary(mixture), reference.published.output.summary)
  })

  it('is worth as many earlier cases as R says, by all three methods', () => {
    const { moment, elir, mode, morita_at_mode } = reference.published.output.ess
    near(size.moment, moment, tolerance.size)
    near(size.local ?? Number.NaN, elir, tolerance.size)
    near(size.mode, mode, tolerance.size)
    near(size.atMode, morita_at_mode, tolerance.size)
  })

  it('has the printed mean, spread and sizes', () => {
    const { mixture_summary, ess } = reference.printed
    const { mean, sd } = mixtureSummary(mixture)
    expect(mean.toFixed(8)).toBe(String(mixture_summary.mean))
    expect(sd.toFixed(8)).toBe(String(mixture_summary.sd))
    expect([size.local, size.moment, size.atMode].map((one) => Math.round(one ?? Number.NaN))).toEqual([
      ess.elir,
      ess.moment,
      ess.morita,
    ])
  })
})

describe('with a fifth of Beta(1, 1) mixed in', () => {
  const mixture = mixtureFrom(reference.robust.output.mixture)

  it('has the summary and the sizes of R, the printed one among them', () => {
    sameSummary(mixtureSummary(mixture), reference.robust.output.summary)
    const size = mixtureSize(mixture)
    near(size.moment, reference.robust.output.ess.moment, tolerance.size)
    near(size.local ?? Number.NaN, reference.robust.output.ess.elir, tolerance.size)
    near(size.atMode, reference.robust.output.ess.morita_at_mode, tolerance.size)
    expect(Math.round(size.local ?? Number.NaN)).toBe(reference.printed.ess_robust_elir)
  })

  it.each(reference.robustUpdate.output.updates)('$k of $n own cases', (wanted) => {
    const prior = mixtureFrom(reference.robustUpdate.input.prior)
    const { mixture: after, logPredictive } = updatedMixture(prior, { events: wanted.k, total: wanted.n })
    after.forEach((part, index) => {
      near(part.weight, wanted.w[index] ?? Number.NaN, tolerance.summary)
      near(part.a, wanted.a[index] ?? Number.NaN, tolerance.summary)
      near(part.b, wanted.b[index] ?? Number.NaN, tolerance.summary)
    })
    sameSummary(mixtureSummary(after), wanted.posterior)
    if (wanted.log_predictive !== undefined) near(logPredictive, wanted.log_predictive, tolerance.summary)
    if (wanted.p_le !== undefined && wanted.box_p !== undefined) {
      const expected = [...mixtureExpectedCounts(prior, wanted.n)]
      const here = expected[wanted.k] ?? Number.NaN
      const sum = (some: readonly number[]) => some.reduce((all, one) => all + one, 0)
      near(sum(expected.slice(0, wanted.k + 1)), wanted.p_le, tolerance.summary)
      near(sum(expected.slice(wanted.k)), wanted.p_ge, tolerance.summary)
      near(sum(expected.filter((one) => one <= here * (1 + 1e-7))), wanted.box_p, tolerance.summary)
    }
  })
})

it('one mixture above another: the printed 0.9913233 and two more', () => {
  reference.greater.input.cases.forEach(({ p1, p2 }, index) => {
    const found = probabilityGreater(mixtureFrom(p1), mixtureFrom(p2))
    expect(Math.abs(found - (reference.greater.output.prob[index] ?? Number.NaN))).toBeLessThanOrEqual(
      tolerance.greater,
    )
  })
  const [first = Number.NaN] = reference.greater.output.prob
  expect(first.toFixed(7)).toBe(String(reference.printed.prob_treat_above_placebo_1_6_vs_14_24))
})

it('the single Beta(11, 32) of the real trial', () => {
  const mixture = mixtureFrom(reference.singleBeta.input)
  sameSummary(mixtureSummary(mixture), reference.singleBeta.output)
  near(mixtureSize(mixture).local ?? Number.NaN, reference.singleBeta.output.ess, tolerance.size)
  near(mixtureSize(mixture).moment, reference.singleBeta.output.ess, tolerance.size)
})
