import { describe, expect, it } from 'vitest'
import { odds } from './odds.ts'
import type { OddsAnswer } from './odds-answer.ts'

const one = (input: unknown): OddsAnswer => {
  const answer = odds(input)
  if ('outcomes' in answer) throw new Error('One outcome was asked for.')
  return answer
}
const all = (input: unknown): readonly OddsAnswer[] => {
  const answer = odds(input)
  if (!('outcomes' in answer)) throw new Error('Every outcome was asked for.')
  return answer.outcomes
}

/** Eight placebo groups (Baeten et al., Lancet 2013;382:1705–1713), as in tests/published/predictive.test.ts. */
const placebo = [
  [23, 107],
  [12, 44],
  [19, 51],
  [9, 39],
  [39, 139],
  [6, 20],
  [9, 78],
  [10, 35],
].map(([events, total]) => ({ events, total }))

describe('odds from raw counts', () => {
  it('gives what a new place should expect (the published worked example)', () => {
    const { published } = one({ studies: placebo, tauPrior: { family: 'half-normal', scale: 1 } })
    expect(published?.mean).toBeCloseTo(0.258277543, 6)
    expect(published?.interval[0]).toBeCloseTo(0.110851, 5)
    expect(published?.interval[1]).toBeCloseTo(0.471436, 5)
    expect(published?.prior.ess).toBeCloseTo(24.07, 2)
    const { mixture = [] } = published?.prior ?? {}
    expect(mixture).toHaveLength(3)
    expect(mixture.reduce((sum, { w, a, b }) => sum + (w * a) / (a + b), 0)).toBeCloseTo(0.2583, 2)
  })

  it('updates by own counts with the weak part that was asked for (six invented series, half-normal 0.5)', () => {
    const studies = [
      [7, 52],
      [3, 33],
      [12, 85],
      [1, 18],
      [9, 40],
      [4, 61],
    ].map(([events, total]) => ({ events, total }))
    const asked = { studies, own: { events: 9, total: 15 }, tauPrior: { family: 'half-normal', scale: 0.5 } }
    const flat = one({ ...asked, robust: 0.2, weak: 'flat' })
    // R, by quadrature: mean 0.577606571, interval 0.315833 to 0.800214.
    expect(flat.updated?.mean).toBeCloseTo(0.577606571, 5)
    expect(flat.updated?.interval[0]).toBeCloseTo(0.315833, 5)
    expect(flat.updated?.interval[1]).toBeCloseTo(0.800214, 5)
    expect(flat.conflict?.p ?? 1).toBeLessThan(0.01)
    expect(one({ ...asked, robust: 0 }).updated?.mean ?? 1).toBeLessThan(flat.updated?.mean ?? 0)
  })

  it('joins nothing that cannot be joined, and says what would help', () => {
    const far = {
      studies: [{ events: 0, total: 1_000_000 }],
      own: { events: 1_000, total: 1_000 },
      tauPrior: { family: 'half-normal', scale: 0.001 },
    }
    const answer = one({ ...far, robust: 0 })
    expect(answer).toMatchObject({ updated: null, say: { middle: null, low: null, high: null } })
    expect(answer.say.sentence).toContain('cannot be joined')
    expect(one({ ...far, robust: 0.2 }).updated?.mean ?? 0).toBeGreaterThan(0.9)
  })

  it('says nothing from nothing', () => {
    expect(one({ studies: [] }).say).toMatchObject({ middle: null, low: null, high: null })
  })

  it('names the wrong field', () => {
    expect(() => odds({ studies: [{ events: 4, total: 3 }] })).toThrow(/studies\[0\]\.events/)
    expect(() => odds({ species: 'horse', procedure: 'teca-lbo', unit: 'ear' })).toThrow(/"horse" is not a species/)
    expect(() => odds({ species: 'dog', procedure: 'teca-lbo', unit: 'ear', modifiers: ['left-handed'] })).toThrow(
      /modifiers\[0\]: "left-handed" is not a circumstance/,
    )
  })
})

describe('odds of one operation', () => {
  const dogs = { species: 'dog', procedure: 'teca-lbo' } as const
  const of = (outcomes: readonly OddsAnswer[], outcome: string) => outcomes.find((found) => found.outcome === outcome)

  it('says one study as one study (Fox 2008: 81 of 309 is 26.2 of 100)', () => {
    const face = of(all({ ...dogs, unit: 'animal' }), 'facial_nerve_deficit_any')
    expect(face?.say).toMatchObject({ per: 100, middle: 26, low: 21, high: 31 })
    expect(face?.say.sentence).toContain('In one study of 309 dogs, 81 had a weak face')
    expect(face?.sources.map(({ id }) => id)).toContain('fox-2008')
  })

  it('joins own counts, withholds our own rate below the minimum and says why', () => {
    const own = { facial_nerve_deficit_any: { events: 0, total: 12, lost: 1 } }
    const face = of(all({ ...dogs, unit: 'ear', own }), 'facial_nerve_deficit_any')
    expect(face?.own).toMatchObject({ events: 0, total: 12, lost: 1, shown: false })
    expect(face?.own?.why).toContain('up to 27 of 100')
    expect(face?.updated?.mean ?? 1).toBeLessThan(face?.published?.mean ?? 0)
  })

  it('keeps what nobody counted unknown', () => {
    const tongue = of(all({ ...dogs, unit: 'ear', own: { hypoglossal: { events: 0, total: 5 } } }), 'hypoglossal')
    expect(tongue).toMatchObject({ published: null, updated: null })
  })

  it('shows what is published of a circumstance, and that of others nothing is known', () => {
    const ears = all({ ...dogs, unit: 'ear', modifiers: ['circular-cut'] })
    const face = of(ears, 'facial_nerve_deficit_any')
    expect(face?.modifiers?.[0]?.ratio).toBeCloseTo(2.48, 1)
    expect(face?.modifiers?.[0]?.share?.mean ?? 0).toBeGreaterThan(face?.published?.mean ?? 1)
    expect(of(ears, 'vestibular_any')?.modifiers?.[0]).toMatchObject({ ratio: null, share: null })
    const animals = all({ ...dogs, unit: 'animal', modifiers: ['skin-disease'] })
    expect(of(animals, 'postop_complication_any')?.modifiers).toHaveLength(2)
  })
})
