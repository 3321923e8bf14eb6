import { describe, expect, it } from 'vitest'
import { evidenceRules } from '#content/evidence/prior.ts'
import { studies } from '#content/studies/index.ts'
import { forestOf } from './forest.ts'
import type { PublishedQuestion } from './published.ts'
import { study } from './study.ts'
import { toldOf } from './told.ts'

const about: Parameters<typeof toldOf>[1] = { studies, ownOf: () => null, rules: evidenceRules, shownFrom: 20 }
const dogs = { species: 'dog', procedure: 'teca-lbo', unit: 'ear', outcome: 'facial_nerve_deficit_any' } as const
const forest = (question: PublishedQuestion, from: Partial<typeof about> = {}) =>
  forestOf(toldOf(question, { ...about, ...from }))

describe('a forest of studies', () => {
  it('shows two studies, the typical one between them, and says no more of another study (Coleman 2016, Esposito 2026)', () => {
    const { studies: shown, typical, expected, without } = forest(dogs)
    expect(shown.map(({ row }) => row.study)).toEqual(['coleman-2016', 'esposito-2026'])
    expect(typical?.share ?? 0).toBeGreaterThan(31 / 156)
    expect(typical?.share ?? 1).toBeLessThan(29 / 79)
    expect(typical?.prediction).toBeNull()
    expect(expected?.interval.low ?? 1).toBeLessThan(typical?.interval.low ?? 0)
    expect(without).toEqual([])
  })

  it('of one study shows that study and no typical one (Fox 2008)', () => {
    const { studies: shown, typical } = forest({ ...dogs, unit: 'animal' })
    expect(shown).toHaveLength(1)
    expect(typical).toBeNull()
  })

  it('shows both readings of one sentence and makes nothing of them (Bacon 2003)', () => {
    const cats = { ...dogs, species: 'cat', outcome: 'facial_nerve_deficit_permanent' } as const
    expect(forest(cats)).toMatchObject({ typical: null, expected: null, pooled: null })
    expect(forest(cats).studies).toHaveLength(2)
  })

  it('from three studies on says where another would lie, and what each of them does', () => {
    const seen = { where: 'an invented page', known: 'read', strength: 'study', checked: '2026-11-25' } as const
    const series = (events: number, total: number) => [
      {
        species: 'dog' as const,
        procedure: 'teca-lbo' as const,
        unit: 'ear' as const,
        outcomes: [
          {
            outcome: 'facial_nerve_deficit_any' as const,
            events,
            total,
            basis: 'stated' as const,
            confidence: 'high' as const,
          },
        ],
      },
    ]
    const invented = [
      [7, 52],
      [3, 33],
      [12, 85],
    ].map(([events = 0, total = 1], at) =>
      study({ id: `s${at}`, year: 2020, design: 'unknown', seen, series: series(events, total) }),
    )
    const { typical, without, pooled } = forest(dogs, { studies: invented })
    expect(typical?.prediction).not.toBeNull()
    expect(without.map((one) => one.study)).toEqual(['s0', 's1', 's2'])
    expect(pooled?.heterogeneity?.qDf).toBe(2)
  })
})
