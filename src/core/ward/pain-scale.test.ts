import { describe, expect, it } from 'vitest'
import { painScales } from '#content/scores/pain-scales.ts'
import { type PainScale, painScaleTops, wardScore } from '#core/journal/kinds/ward-score.ts'
import { readPain } from './pain-scale.ts'

const scales = Object.keys(painScaleTops) as PainScale[]

/** The lowest score that asks for relief on each scale for its own species. */
function actsAt(scale: PainScale): number | undefined {
  const { species } = painScales[scale].value
  const scores = Array.from({ length: painScaleTops[scale] + 1 }, (_, score) => score)
  return scores.find((score) => readPain({ scale, score }, species, painScales).kind === 'act')
}

describe('a pain score', () => {
  it('asks for relief from the published score on', () => {
    // Reid 2007: 6 of 24, or 5 of 20 without the walk. Reid 2017: 5 of 20. Calvo 2014: 4 of 16, and 3 of 10.
    // Evangelista 2019: 0.39 of 1.0, said as 4 of 10.
    expect(Object.fromEntries(scales.map((scale) => [scale, actsAt(scale)]))).toEqual({
      'glasgow-dog-short': 6,
      'glasgow-dog-short-not-walked': 5,
      'glasgow-cat': 5,
      'glasgow-cat-earlier': 4,
      'grimace-cat': 4,
      'numbers-0-10-cat': 3,
      'house-0-10': undefined,
    })
  })

  it('on our own scale claims no limit, and is marked as the house’s', () => {
    expect(readPain({ scale: 'house-0-10', score: 10 }, 'dog', painScales)).toEqual({
      kind: 'unknown',
      because: 'no-limit',
    })
    expect(painScales['house-0-10'].known).toBe('house')
  })

  it('on a scale for cats says nothing of a dog', () => {
    expect(readPain({ scale: 'grimace-cat', score: 9 }, 'dog', painScales)).toEqual({
      kind: 'unknown',
      because: 'other-species',
    })
  })

  it('lies within its scale, whose range is the one the publication names', () => {
    for (const scale of scales) {
      const top = painScaleTops[scale]
      expect(painScales[scale].value.outOf).toBe(top)
      const of = (score: number) => wardScore.body.safeParse({ ...wardScore.example, pain: { scale, score } }).success
      expect([of(0), of(top), of(top + 1)]).toEqual([true, true, false])
    }
  })
})
