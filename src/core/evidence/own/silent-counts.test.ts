import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { earForTests } from '#core/results/ears-for-tests.ts'
import { countEvery, countedGroups } from './count-own.ts'
import { ownOutcomes } from './own-outcome.ts'
import { partCounts } from './silent-counts.ts'

const today = '2025-03-01'
const dogs = { species: 'dog', procedure: 'teca-lbo' } as const
const countsOf = (ears: Parameters<typeof countEvery>[2]) =>
  countEvery(dogs, ownOutcomes, ears, today, ownCounting).filter(({ question }) => question.unit === 'ear')

describe('counts that say nothing yet', () => {
  it('are said together, those of which nobody is due first; none is dropped', () => {
    const counts = countsOf([earForTests(1, { known: { corneal_ulcer: true } }), earForTests(2, { on: '2025-02-27' })])
    const { said, silent } = partCounts(counts)
    expect(said.map(({ question }) => question.outcome)).toEqual(['corneal_ulcer'])
    expect(silent.map(({ due }) => due)).toEqual([0, 1, 2])
    expect(said.length + silent.flatMap((one) => one.counts).length).toBe(counts.length)
  })

  it('are not silent where somebody had it before it was due', () => {
    const counts = countsOf([earForTests(1, { on: '2025-02-20', known: { deep_recurrence: true } })])
    expect(partCounts(counts).said.map(({ question }) => question.outcome)).toEqual(['deep_recurrence'])
  })

  it('have the same cases behind them when as many are due', () => {
    const ears = [earForTests(1), earForTests(2, { on: '2025-02-27' }), earForTests(3, { on: '2024-01-05' })]
    for (const { counts } of partCounts(countsOf(ears)).silent) {
      const behind = counts.map(({ question }) =>
        countedGroups(question, ears, today, ownCounting).map(({ standing }) => standing),
      )
      expect(new Set(behind.map((one) => one.join())).size).toBe(1)
    }
  })
})
