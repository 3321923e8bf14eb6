import { describe, expect, it } from 'vitest'
import { modifiers } from '#content/evidence/modifiers.ts'
import { studies } from '#content/studies/index.ts'
import { modified, oddsRatioOf } from '#core/evidence/modifier.ts'
import { predictiveOf } from '#core/stats/predictive/predictive.ts'
import { summaryOf } from '#core/stats/predictive/summary.ts'

/** Odds ratios with Woolf's interval from printed counts, worked out elsewhere by hand from the same abstracts. */
const ratios: readonly (readonly [id: string, value: number, low: number, high: number])[] = [
  ['short-faced-in-theatre', 2.22, 0.9, 5.48],
  ['short-faced-around', 0.74, 0.41, 1.33],
  ['both-ears-face', 1.33, 0.53, 3.34],
  ['both-ears-any', 1.48, 0.57, 3.83],
  ['both-ears-wound', 1.6, 0.59, 4.35],
  ['both-ears-breathing-cat', 9.5, 4.8, 18.8],
  ['circular-cut-bleeding', 5.3, 1.1, 24.7],
  ['circular-cut-face', 2.5, 1.1, 5.8],
]

const found = (id: string) => {
  const one = modifiers.find((modifier) => modifier.id === id)
  if (!one) throw new Error(`${id} is not there.`)
  return oddsRatioOf(one, studies)
}

describe('odds ratios of published arms', () => {
  it.each(ratios)('%s is %d (%d to %d)', (id, value, low, high) => {
    const digits = value >= 5 ? 1 : String(value).split('.')[1]?.length === 1 ? 1 : 2
    expect(found(id)?.value).toBeCloseTo(value, digits - 0.3)
    expect(found(id)?.interval.low).toBeCloseTo(low, digits - 0.3)
    expect(found(id)?.interval.high).toBeCloseTo(high, digits - 0.3)
  })

  it('T against circle, each arm by its own base: wound trouble in 32 and 10 of 100 (Esposito 2026), ratio 4.5 (1.9–10.8)', () => {
    const ratio = found('circular-cut-wound')
    expect(ratio?.arms).toEqual({ with: { events: 8, total: 84 }, without: { events: 23, total: 72 } })
    expect(Math.round((100 * 23) / 72)).toBe(32)
    expect(Math.round((100 * 8) / 84)).toBe(10)
    expect(1 / (ratio?.value ?? 0)).toBeCloseTo(4.5, 1)
    // 1.848, written there as 1.9.
    expect(1 / (ratio?.interval.high ?? 0)).toBeCloseTo(1.85, 2)
    expect(1 / (ratio?.interval.low ?? 0)).toBeCloseTo(10.8, 0)
  })

  it('shows contradicting studies both: skin disease with fewer (Fox 2008) and with more (Doyle 2004)', () => {
    const skin = modifiers.filter(({ factor }) => factor === 'skin-disease')
    expect(skin.map(({ sources }) => sources[0]).sort()).toEqual(['doyle-2004', 'fox-2008'])
    expect(skin.map((one) => oddsRatioOf(one, studies)?.value ?? null)).toContain(null)
  })
})

describe('a share under a circumstance', () => {
  const { distribution } = predictiveOf([{ events: 100_000, total: 400_000 }], {
    mu: { mean: 0, sd: 2 },
    tauScale: 0.001,
  })

  it('moves on the log odds scale: 25 of 100 with a ratio of 3 is 50 of 100', () => {
    expect(modified(distribution, { log: Math.log(3), se: 1e-6 }).mean).toBeCloseTo(0.5, 2)
  })

  it('is unchanged by a ratio of exactly 1, and grows wider with its uncertainty', () => {
    const { mean, interval } = summaryOf(distribution)
    const same = modified(distribution, { log: 0, se: 1e-6 })
    expect(same.mean).toBeCloseTo(mean, 4)
    expect(same.interval.low).toBeCloseTo(interval.low, 4)
    const unsure = modified(distribution, { log: 0, se: 0.5 }).interval
    // 25 of 100 ± 1.96 · 0.5 on the log odds scale: 11.1 to 47.0.
    expect(unsure.low).toBeCloseTo(0.111, 2)
    expect(unsure.high).toBeCloseTo(0.47, 2)
  })
})
