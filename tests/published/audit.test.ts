/** Comparisons, rates, limits, running sums and agreement beside R (data/audit.json: calls and versions in `meta`). */
import { describe, expect, it } from 'vitest'
import { agreementWeights, kappaOf, manyReaders } from '#core/stats/agreement.ts'
import { exactTest } from '#core/stats/exact-chances.ts'
import { expectedLessObserved, poissonBinomial } from '#core/stats/monitoring/expected-less-observed.ts'
import { funnelLimit, funnelSpread } from '#core/stats/monitoring/funnel.ts'
import { observedOverExpected, poissonRate, rateRatio } from '#core/stats/poisson-rate.ts'
import type { Count } from '#core/stats/proportion-interval.ts'
import { differenceOf, fisherExact } from '#core/stats/two-proportions.ts'
import reference from './data/audit.json' with { type: 'json' }

/** R writes what is not finite as text. */
function near(value: number | undefined, wanted: number | string | null | undefined, relative: number): void {
  if (wanted === null || wanted === undefined || value === undefined) throw new Error(`${value} against ${wanted}.`)
  const target = wanted === 'Inf' ? Infinity : Number(wanted)
  if (!Number.isFinite(target)) {
    expect(value).toBe(target)
    return
  }
  const off = Math.abs(target) < 1e-12 ? Math.abs(value) : Math.abs(value / target - 1)
  expect(off, `${value} instead of ${target}`).toBeLessThanOrEqual(Math.abs(target) < 1e-12 ? 1e-12 : relative)
}

function answered<Answer>(
  outcome: { kind: 'answer'; answer: Answer } | { kind: 'refusal'; refusal: { because: string } },
) {
  if (outcome.kind === 'refusal') throw new Error(outcome.refusal.because)
  return outcome.answer
}

it('holds every case of the reference that it is here for', () => {
  const held = Object.entries(reference).map(([name, cases]) => [name, Array.isArray(cases) ? cases.length : 0])
  expect(Object.fromEntries(held)).toMatchObject({
    tests: 6,
    differences: 4,
    rates: 6,
    ratios: 1,
    observedExpected: 1,
    funnels: 4,
    spread: 1,
    running: 1,
    kappa: 8,
    manyReaders: 1,
  })
})

describe('one share against a fixed one, exactly, to 1e-9', () => {
  it.each(reference.tests)('$id', ({ input, output, tol }) => {
    const p = exactTest({ events: input.k, total: input.n }, input.p0)
    near(p.twoSided, output.p_two_sided, tol.value)
    near(p.less, output.p_less, tol.value)
    near(p.greater, output.p_greater, tol.value)
  })
})

/** The chance of so many or more of the first group, by plain sums over whole tables, for odds of so much. */
function tableTail(first: Count, second: Count, odds: number, from: number, until: number): number {
  const ways = (n: number, k: number): number => (k < 0 || k > n ? 0 : k === 0 ? 1 : (ways(n - 1, k - 1) * n) / k)
  const had = first.events + second.events
  const weight = (k: number) => ways(first.total, k) * ways(second.total, had - k) * odds ** k
  const all = Array.from({ length: had + 1 }, (_, k) => weight(k))
  const sum = all.reduce((one, two) => one + two, 0)
  return all.reduce((tail, one, k) => (k >= from && k <= until ? tail + one : tail), 0) / sum
}

/**
 * The search of R for the ends of this interval stops at about 1e-4 (its own default); so its ends are met within that,
 * and ours must solve the equation itself: 2.5 % of the tables lie beyond.
 */
const searchOfR = 2e-4

describe('two shares: Newcombe and Fisher to 1e-9, the ends of the conditional odds ratio by their own equation', () => {
  it.each(reference.differences)('$id', ({ input, output, tol }) => {
    const [first, second] = [
      { events: input.k1, total: input.n1 },
      { events: input.k2, total: input.n2 },
    ]
    const apart = answered(differenceOf(first, second))
    near(apart.difference, output.difference, 1e-9)
    near(apart.interval.low, output.newcombe[0], 1e-9)
    near(apart.interval.high, output.newcombe[1], 1e-9)
    const exact = answered(fisherExact(first, second))
    near(exact.p, output.fisher_p, 1e-9)
    near(exact.oddsRatio, output.conditional_or, tol.value)
    const { low, high } = exact.interval
    near(low, output.conditional_or_ci[0], searchOfR)
    near(high, output.conditional_or_ci[1], searchOfR)
    if (low > 0) near(tableTail(first, second, low, first.events, Infinity), 0.025, 1e-9)
    if (high < Infinity) near(tableTail(first, second, high, 0, first.events), 0.025, 1e-9)
  })
})

describe('rates after Garwood to 1e-9', () => {
  it.each(reference.rates)('$id', ({ input, output, tol }) => {
    const { rate, interval, againstOne } = poissonRate({ events: input.x, exposure: input.T })
    near(rate, output.rate, tol.value)
    near(interval.low, output.ci[0], tol.value)
    near(interval.high, output.ci[1], tol.value)
    near(againstOne.twoSided, output.p_vs_1, tol.value)
    near(againstOne.greater, output.p_greater, tol.value)
    near(againstOne.less, output.p_less, tol.value)
  })

  it.each(reference.ratios)('$id', ({ input, output, tol }) => {
    const [a, b] = input.x.map((events, i) => ({ events, exposure: input.T[i] ?? 0 }))
    if (!a || !b) throw new Error('Two rates are compared.')
    const { ratio, interval, p } = rateRatio(a, b)
    near(ratio, output.ratio, tol.value)
    near(interval.low, output.ci[0], tol.value)
    near(interval.high, output.ci[1], tol.value)
    near(p, output.p, tol.value)
  })

  it.each(reference.observedExpected)('$id', ({ input, output, tol }) => {
    const { ratio, interval, byar, p } = observedOverExpected(input.O, input.E)
    near(ratio, output.ratio, tol.value)
    near(interval.low, output.ci[0], tol.value)
    near(interval.high, output.ci[1], tol.value)
    near(byar.low, output.byar[0], tol.value)
    near(byar.high, output.byar[1], tol.value)
    near(p, output.p, tol.value)
  })
})

describe('limits of groups of cases to 1e-9, their spread to 1e-10', () => {
  it.each(reference.funnels)('$id', ({ input, output, tol }) => {
    input.tail.forEach((tail, row) => {
      input.n.forEach((total, column) => {
        near(funnelLimit(input.target, total, tail), output.limit[row]?.[column], tol.value)
      })
    })
  })

  it.each(reference.spread)('$id', ({ input, output, tol }) => {
    const found = funnelSpread(input.k.map((events, i) => ({ events, total: input.n[i] ?? 0 })))
    near(found.target, output.target, tol.value)
    near(found.factor, output.phi, tol.value)
    near(found.factorDrawnIn, output.phi_winsorised_10, tol.value)
    near(found.between, output.tau2_additive, tol.value)
    found.groups.forEach(({ z, orMore, midOrMore }, i) => {
      near(z, output.z[i], tol.value)
      near(orMore, output.p_exact_upper[i], tol.value)
      near(midOrMore, output.p_exact_mid[i], tol.value)
    })
  })
})

describe('expected less observed, with exact limits, to 1e-10', () => {
  it.each(reference.running)('$id', ({ input, output, tol }) => {
    const found = expectedLessObserved(input.p.map((risk, i) => ({ risk, event: input.y[i] === 1 })))
    found.forEach(({ value, expected, observed, deviation }, i) => {
      // Sums of tenths: the reference prints 0.0900000000000001.
      expect(Math.abs(value - (output.vlad[i] ?? Number.NaN))).toBeLessThan(1e-12)
      near(expected, output.expected[i], tol.value)
      expect(observed).toBe(output.observed[i])
      near(deviation, output.sd[i], tol.value)
    })
    input.limits_at.forEach((count, i) => {
      near(found[count - 1]?.low, output['limit_low_2.5'][i], tol.value)
      near(found[count - 1]?.high, output['limit_high_97.5'][i], tol.value)
    })
    const chances = poissonBinomial(input.p)
    chances.forEach((chance, events) => {
      near(chance, output.total_pmf[events], tol.value)
    })
    const asMany = chances.slice(found.at(-1)?.observed).reduce((sum, chance) => sum + chance, 0)
    near(asMany, output.prob_at_least_observed, tol.value)
  })
})

describe('agreement of two readers and of many, to 1e-9', () => {
  it.each(reference.kappa)('$id', ({ input, output, tol }) => {
    const names = { plain: 'unweighted', linear: 'linear', quadratic: 'quadratic' } as const
    for (const weights of agreementWeights) {
      const wanted = output[names[weights]]
      const found = kappaOf(input.table_rows, weights)
      if (wanted.kappa === 'NaN') {
        expect(found).toEqual({ kind: 'refusal', refusal: { because: 'one-grade-only' } })
        continue
      }
      const { observed, chance, kappa, error, errorWithoutAgreement } = answered(found)
      near(observed, wanted.po, tol.value)
      near(chance, wanted.pe, tol.value)
      near(kappa, wanted.kappa, tol.value)
      near(error, wanted.se, tol.value)
      near(errorWithoutAgreement, wanted.se_null, tol.value)
    }
  })

  it.each(reference.manyReaders)('$id', ({ input, output, tol }) => {
    const { observed, chance, kappa, perCase } = answered(manyReaders(input.counts))
    near(observed, output.mean_agreement, tol.value)
    near(chance, output.chance, tol.value)
    near(kappa, output.kappa, tol.value)
    perCase.forEach((share, i) => {
      near(share, output.subject_agreement[i], tol.value)
    })
  })
})
