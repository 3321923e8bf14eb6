import { describe, expect, it } from 'vitest'
import type { SurvivalAnswer } from '#actions/survival/survival.ts'
import { problem, quietEar } from './run-for-tests.ts'

const asked = (input: string, ...options: string[]) => quietEar(['survival', '-', ...options], input)
const answered = (input: string, ...options: string[]) => asked(input, '--json', ...options).json() as SurvivalAnswer

/** Maintenance of chemotherapy (Miller 1981), the set `aml` of R’s survival package. */
const maintained = [9, 13, 13, 18, 23, 28, 31, 34, 45, 48, 161].map(
  (time, i) => `${time},${[2, 5, 8, 10].includes(i) ? 0 : 1},maintained`,
)
const not = [5, 5, 8, 8, 12, 16, 23, 27, 30, 33, 43, 45].map((time, i) => `${time},${i === 5 ? 0 : 1},not maintained`)
const aml = ['time,status,group', ...maintained, ...not].join('\n')

describe('survival', () => {
  it('gives the medians and the log-rank test that R prints for its set aml', () => {
    const { groups, logRank } = answered(aml, '--interval', 'log')
    expect(groups.map(({ group, n, events, median }) => [group, n, events, median.value])).toEqual([
      ['maintained', 11, 7, 31],
      ['not maintained', 12, 11, 23],
    ])
    expect(logRank?.chisq).toBeCloseTo(3.3963886989776, 10)
    expect(logRank?.p).toBeCloseTo(0.0653393220405051, 10)
    expect(groups[0]?.steps[0]).toMatchObject({ time: 9, atRisk: 11, events: 1, censored: 0 })
  })

  it('reads JSON as it reads CSV', () => {
    const rows = [
      { time: 3, status: 1 },
      { time: 5, status: 0 },
    ]
    expect(answered(JSON.stringify(rows))).toEqual(answered('time,status\n3,1\n5,0'))
  })

  it('says that other ends count as leaving, and with --competing counts them as ends of their own', () => {
    const rows = 'time,status\n2,2\n3,1\n5,1\n7,0'
    expect(answered(rows).notes.map(({ code }) => code)).toEqual(['other-ends-leave'])
    const { cumulativeIncidence, notes } = answered(rows, '--competing')
    expect(notes).toEqual([])
    expect(cumulativeIncidence?.[0]?.steps.at(-1)).toMatchObject({ event: 0.5, competing: 0.25 })
  })

  it('gives no mean beyond what is followed, and says so', () => {
    const { groups, notes } = answered('time,status\n3,1\n5,0', '--horizon', '9')
    expect(groups[0]?.rmean).toBeNull()
    expect(notes.map(({ code }) => code)).toEqual(['mean-beyond'])
  })

  it('says that nobody has had the event', () => {
    const { groups, notes } = answered('time,status\n5,0\n8,0')
    expect(groups[0]).toMatchObject({ events: 0, median: { value: null, interval: [null, null] } })
    expect(groups[0]?.steps.at(-1)).toMatchObject({ survival: 1, interval: null })
    expect(notes.map(({ code }) => code)).toEqual(['no-event'])
  })

  it('prints a table for people', () => {
    const text = asked(aml, '--competing').out
    expect(text).toContain('Group maintained: 11 followed, 7 with the event; median 31')
    expect(text).toContain('Log-rank: chi-square 3.396 on 1, p = 0.06534')
  })

  it('names the row, the column and what would be right', () => {
    expect(problem(asked('time,status\n3,1\n-4,0', '--json'))).toMatchObject({
      code: 'wrong-value',
      path: 'rows[1].time',
    })
    expect(problem(asked('time,status\n3,5', '--json'))).toMatchObject({ code: 'wrong-value', path: 'rows[0].status' })
    expect(problem(asked('time,end\n3,1', '--json'))).toMatchObject({ code: 'missing-field', path: 'rows[0].status' })
    expect(problem(asked('time,status\nsoon,1', '--json'))).toMatchObject({ path: 'rows[0].time' })
    expect(problem(asked('time,status\n3,1', '--interval', 'wide', '--json'))).toMatchObject({ path: 'interval' })
    expect(problem(asked('time,status\n3,1', '--horizon', 'far', '--json'))).toMatchObject({ path: 'horizon' })
    expect(problem(asked('time,status\n', '--json')).code).toBe('empty')
  })
})
