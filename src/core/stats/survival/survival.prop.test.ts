import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { cumulativeIncidence } from './cumulative-incidence.ts'
import { kaplanMeier } from './kaplan-meier.ts'
import { endTimesOf, type Followed, lifeTable } from './life-table.ts'
import { logRank } from './log-rank.ts'
import { restrictedMean } from './restricted-mean.ts'
import { limitScales, limitsAt } from './survival-limits.ts'

const followed: fc.Arbitrary<Followed> = fc.record({
  time: fc.integer({ min: 0, max: 60 }),
  status: fc.constantFrom(0 as const, 1 as const, 2 as const),
})
const some = fc.array(followed, { minLength: 1, maxLength: 60 })

function tableOf(rows: readonly Followed[]) {
  const made = lifeTable(endTimesOf(rows))
  if (made.kind === 'refusal') throw new Error(made.refusal.because)
  return made.answer
}

describe('whatever was followed', () => {
  it('everybody leaves once', () => {
    fc.assert(
      fc.property(some, (rows) => {
        const { total, atRisk, events, competing, censored } = tableOf(rows)
        const left = [events, competing, censored].flatMap((column) => [...column]).reduce((sum, one) => sum + one, 0)
        expect(left).toBe(rows.length)
        expect(total).toBe(rows.length)
        expect(atRisk[0]).toBe(rows.length)
      }),
    )
  })

  it('the share without the event never rises, and lies within its limits', () => {
    fc.assert(
      fc.property(some, (rows) => {
        const curve = kaplanMeier(tableOf(rows))
        let before = 1
        curve.survival.forEach((share, line) => {
          expect(share).toBeLessThanOrEqual(before)
          before = share
          for (const scale of limitScales) {
            const { low, high } = limitsAt(curve, line, scale)
            if (low !== null) expect(low).toBeLessThanOrEqual(share + 1e-12)
            if (high !== null) expect(high).toBeGreaterThanOrEqual(share - 1e-12)
          }
        })
      }),
    )
  })

  it('those with the event, those who ended otherwise and those without any end make one', () => {
    fc.assert(
      fc.property(some, (rows) => {
        const found = cumulativeIncidence(tableOf(rows))
        const anyEnd = rows.map(({ time, status }): Followed => ({ time, status: status === 0 ? 0 : 1 }))
        const free = kaplanMeier(tableOf(anyEnd)).survival
        free.forEach((share, line) => {
          expect((found.event[line] ?? 0) + (found.competing[line] ?? 0) + share).toBeCloseTo(1, 10)
        })
      }),
    )
  })

  it('deaths taken for people who only left never make the share with the event smaller', () => {
    fc.assert(
      fc.property(some, (rows) => {
        const table = tableOf(rows)
        const { event } = cumulativeIncidence(table)
        kaplanMeier(table).survival.forEach((share, line) => {
          expect(1 - share).toBeGreaterThanOrEqual((event[line] ?? 0) - 1e-12)
        })
      }),
    )
  })

  it('the order of the rows and the unit of time change nothing', () => {
    fc.assert(
      fc.property(some, (rows) => {
        const one = kaplanMeier(tableOf(rows)).survival
        const other = kaplanMeier(tableOf([...rows].reverse().map((row) => ({ ...row, time: row.time * 7 })))).survival
        expect([...other]).toEqual([...one])
      }),
    )
  })

  it('the mean up to the last time is at most that time', () => {
    fc.assert(
      fc.property(some, (rows) => {
        const last = Math.max(...rows.map(({ time }) => time))
        const mean = restrictedMean(kaplanMeier(tableOf(rows)), last)
        if (mean.kind === 'refusal') throw new Error(mean.refusal.because)
        expect(mean.answer.mean).toBeLessThanOrEqual(last + 1e-9)
        const beyond = restrictedMean(kaplanMeier(tableOf([...rows, { time: last, status: 0 }])), last + 1)
        if (rows.every(({ status }) => status !== 1)) expect(beyond.kind).toBe('refusal')
      }),
    )
  })

  it('two groups change places and the test says the same; observed and expected sum alike', () => {
    fc.assert(
      fc.property(some, some, (a, b) => {
        const one = logRank([[endTimesOf(a), endTimesOf(b)]])
        const other = logRank([[endTimesOf(b), endTimesOf(a)]])
        expect(other.kind).toBe(one.kind)
        if (one.kind === 'refusal' || other.kind === 'refusal') return
        expect(other.answer.chiSquare).toBeCloseTo(one.answer.chiSquare, 8)
        const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0)
        expect(sum(one.answer.observed)).toBeCloseTo(sum(one.answer.expected), 8)
      }),
    )
  })
})

describe('a life table', () => {
  it('is refused for a time below zero, one that is none, and for nobody', () => {
    const wrong = (time: number) =>
      lifeTable(
        endTimesOf([
          { time: 3, status: 0 },
          { time, status: 1 },
        ]),
      )
    expect(wrong(-1)).toEqual({ kind: 'refusal', refusal: { because: 'time-not-usable', time: -1 } })
    expect(wrong(Number.NaN).kind).toBe('refusal')
    expect(wrong(Number.POSITIVE_INFINITY).kind).toBe('refusal')
    expect(lifeTable(endTimesOf([]))).toEqual({ kind: 'refusal', refusal: { because: 'nobody-followed' } })
  })
})

describe('a comparison of groups', () => {
  it('is refused where there is one group, and where all have the event at one time', () => {
    const one = endTimesOf([{ time: 3, status: 1 }])
    expect(logRank([[one]])).toEqual({ kind: 'refusal', refusal: { because: 'fewer-than-two-groups' } })
    expect(logRank([[one, one]])).toEqual({ kind: 'refusal', refusal: { because: 'no-spread' } })
  })
})
