/** Reference values computed with R's survival and cmprsk (versions in data/survival.json, `meta`; calls in each case). */
import { describe, expect, it } from 'vitest'
import { cumulativeIncidence, incidenceLimits } from '#core/stats/survival/cumulative-incidence.ts'
import { kaplanMeier, nelsonAalen, type SurvivalCurve } from '#core/stats/survival/kaplan-meier.ts'
import { endTimesOf, type Followed, lifeTable, lineAt } from '#core/stats/survival/life-table.ts'
import { logRank } from '#core/stats/survival/log-rank.ts'
import { restrictedMean } from '#core/stats/survival/restricted-mean.ts'
import { type LimitScale, limitsAt } from '#core/stats/survival/survival-limits.ts'
import { survivalQuantile } from '#core/stats/survival/survival-quantile.ts'
import reference from './data/survival.json' with { type: 'json' }

const relative = 1e-10
const scales = { log: 'log', loglog: 'log-log', plain: 'plain' } as const satisfies Record<string, LimitScale>

/** R writes what is not defined as NaN, as null, or as an endless number. */
type Told = number | string | null | undefined

function expectTold(value: number | null | undefined, wanted: Told, tolerance = relative): void {
  if (typeof wanted !== 'number') {
    expect(value === null || value === undefined || !Number.isFinite(value), `${value} instead of none`).toBe(true)
    return
  }
  if (value === null || value === undefined) throw new Error(`Nothing instead of ${wanted}.`)
  const size = Math.max(Math.abs(wanted), 1e-12)
  expect(Math.abs(value - wanted) / size, `${value} instead of ${wanted}`).toBeLessThanOrEqual(tolerance)
}

function rowsOf({
  time,
  status,
}: {
  readonly time: readonly number[]
  readonly status: readonly number[]
}): Followed[] {
  return time.map((at, i) => ({ time: at, status: (status[i] ?? 0) as Followed['status'] }))
}

function tableOf(rows: readonly Followed[]) {
  const made = lifeTable(endTimesOf(rows))
  if (made.kind === 'refusal') throw new Error(made.refusal.because)
  return made.answer
}

type Columns = Readonly<Record<string, readonly Told[]>>
type Curve = { readonly curve?: Columns; readonly ci?: Readonly<Record<string, Columns>> }

describe('Kaplan–Meier agrees with R to 1e-10', () => {
  it('holds all 16 reference cases', () => {
    expect(reference.kaplanMeier).toHaveLength(16)
  })

  it.each(reference.kaplanMeier)('$id', ({ input, output }) => {
    const curve = kaplanMeier(tableOf(rowsOf(input)))
    const confidence = 'conf' in input ? (input.conf ?? 0.95) : 0.95
    const { curve: lines, ci } = output as unknown as Curve
    if (lines) expectCurve(curve, lines, ci ?? {}, confidence)
    for (const [name, wanted] of Object.entries(output.at)) {
      const scale = scales[name as keyof typeof scales]
      wanted.time.forEach((time, i) => {
        const line = lineAt(curve.table, time)
        const limits = limitsAt(curve, line, scale, confidence)
        const share = line < 0 ? 1 : (curve.survival[line] ?? 0)
        expectTold(share, wanted.surv[i])
        expectTold(Math.sqrt(curve.logVariance[line] ?? 0) * share, wanted.se[i])
        // Before the first line R writes one for both limits; on the log-log scale ours are none, as after it without an event.
        if (line < 0 && scale === 'log-log') return
        expectTold(limits.low, wanted.lower[i])
        expectTold(limits.high, wanted.upper[i])
      })
    }
    for (const [name, wanted] of Object.entries(output.quantile)) {
      const scale = scales[name as keyof typeof scales]
      wanted.probs.forEach((probability, i) => {
        const found = survivalQuantile(curve, probability, scale, confidence)
        expect({ value: found.value, low: found.low, high: found.high }).toEqual({
          value: wanted.q[i],
          low: wanted.lower[i],
          high: wanted.upper[i],
        })
      })
    }
    for (const { horizon, rmean, se } of output.restricted_mean) {
      const mean = restrictedMean(curve, horizon)
      if (mean.kind === 'refusal') throw new Error(mean.refusal.because)
      expectTold(mean.answer.mean, rmean)
      expectTold(mean.answer.error, se)
    }
  })
})

function expectCurve(curve: SurvivalCurve, wanted: Columns, ci: NonNullable<Curve['ci']>, confidence: number): void {
  const { table } = curve
  expect([...table.time]).toEqual(wanted.time)
  const { hazard, variance } = nelsonAalen(table)
  table.time.forEach((_, i) => {
    expectTold(table.atRisk[i], wanted.n_risk?.[i])
    expectTold(table.events[i], wanted.n_event?.[i])
    expectTold(table.censored[i], wanted.n_censor?.[i])
    expectTold(curve.survival[i], wanted.surv?.[i])
    expectTold(Math.sqrt(curve.logVariance[i] ?? 0), wanted.se_log_surv?.[i])
    expectTold(hazard[i], wanted.nelson_aalen?.[i])
    expectTold(Math.sqrt(variance[i] ?? 0), wanted.se_nelson_aalen?.[i])
    for (const [name, scale] of Object.entries(scales)) {
      const limits = limitsAt(curve, i, scale, confidence)
      expectTold(limits.low, ci[name]?.lower?.[i])
      expectTold(limits.high, ci[name]?.upper?.[i])
    }
  })
}

describe('The log-rank test agrees with R', () => {
  it.each(reference.logRank)('$id', ({ input, output, tolerance }) => {
    const limit = tolerance.value
    const groups = [...new Set(input.group)].sort((a, b) => a - b)
    const strataNames = 'strata' in input ? [...new Set(input.strata)] : [null]
    const strata = strataNames.map((stratum) =>
      groups.map((group) =>
        endTimesOf(
          rowsOf(input).filter(
            (_, i) =>
              input.group[i] === group && (stratum === null || ('strata' in input && input.strata?.[i] === stratum)),
          ),
        ),
      ),
    )
    for (const [weights, wanted] of [
      ['log-rank', output.rho0],
      ['peto-peto', output.rho1],
    ] as const) {
      const found = logRank(strata, weights)
      if (found.kind === 'refusal') throw new Error(found.refusal.because)
      const { total, observed, expected, variance, chiSquare, degrees, p } = found.answer
      expect(total).toEqual(wanted.n)
      wanted.observed.forEach((value, i) => {
        expectTold(observed[i], value, limit)
        expectTold(expected[i], wanted.expected[i], limit)
      })
      variance.flat().forEach((value, i) => {
        expectTold(value, wanted.variance[i], limit)
      })
      expectTold(chiSquare, wanted.chisq, limit)
      expect(degrees).toBe(wanted.df)
      expectTold(p, wanted.p, limit * 10)
    }
  })
})

describe('The share with the event beside a competing end agrees with R (Aalen–Johansen, delta-method variance)', () => {
  it.each(reference.incidence)('$id', ({ input, output }) => {
    const table = tableOf(rowsOf({ time: input.time, status: input.cause }))
    const found = cumulativeIncidence(table)
    const curve = (output as unknown as { curve?: Columns }).curve
    if (curve) {
      expect([...table.time]).toEqual(curve.time)
      table.time.forEach((_, i) => {
        expectTold(found.event[i], curve.cif_event?.[i])
        expectTold(found.competing[i], curve.cif_death?.[i])
        expectTold(found.eventError[i], curve.se_ij_event?.[i], 1e-8)
        expectTold(found.competingError[i], curve.se_ij_death?.[i], 1e-8)
      })
    }
    const { at } = output
    at.time.forEach((time, i) => {
      const line = lineAt(table, time)
      const share = found.event[line] ?? 0
      const error = found.eventError[line] ?? 0
      expectTold(share, at.cif_event[i])
      expectTold(found.competing[line], at.cif_death[i])
      expectTold(error, at.se_delta[i], 1e-8)
      const limits = incidenceLimits(share, error)
      expectTold(limits.low, at.loglog_lower_delta[i], 1e-8)
      expectTold(limits.high, at.loglog_upper_delta[i], 1e-8)
      // What comes out when deaths are taken for people who only left: too high.
      expectTold(1 - (kaplanMeier(table).survival[line] ?? 1), at.km_complement_wrong[i])
    })
  })
})
