import { describe, expect, it } from 'vitest'
import { problem, quietEar } from './run-for-tests.ts'

const studies = [
  { id: 'a', events: 7, total: 52 },
  { id: 'b', events: 3, total: 33 },
  { id: 'c', events: 12, total: 85 },
  { id: 'd', events: 1, total: 18 },
  { id: 'e', events: 9, total: 40 },
  { id: 'f', events: 4, total: 61 },
]
const pool = (input: unknown, ...options: string[]) => quietEar(['pool', '-', ...options], JSON.stringify(input))
type Answer = {
  k: number
  estimate: number | null
  interval: [number, number]
  prediction: [number, number] | null
  tau2: number | null
  qDf: number | null
  studies: { interval: [number, number] }[]
  leaveOneOut: { without: string; estimate: number | null }[]
  notes: { code: string; text: string }[]
}
const answered = (input: unknown) => pool(input, '--json').json() as Answer

describe('pool', () => {
  it('gives the shape of the contract, with the figures of the converged fit in R (tests/published/data/pooling.json)', () => {
    const answer = answered({ studies, method: 'binomial-normal' })
    expect(answer.k).toBe(6)
    expect(answer.estimate).toBeCloseTo(0.123588040854874, 7)
    expect(answer.interval[0]).toBeCloseTo(0.087242258011373, 7)
    expect(answer.prediction?.[1]).toBeCloseTo(0.216630019527328, 7)
    expect(answer.qDf).toBe(5)
    expect(answer.leaveOneOut.map(({ without }) => without)).toEqual(['a', 'b', 'c', 'd', 'e', 'f'])
    expect(answer.leaveOneOut[0]?.estimate).toBeCloseTo(0.118262489105995, 7)
  })

  it('takes REML, DL or ML for the inverse variance, REML when nothing is said', () => {
    const method = 'inverse-variance-logit'
    expect(answered({ studies, method }).tau2).toBeCloseTo(0.0689858695286315, 7)
    expect(answered({ studies, method, tau: 'DL' }).tau2).toBeCloseTo(0.0647268095058458, 9)
    expect(answered({ studies, method, tau: 'ML' }).tau2).toBe(0)
  })

  it('pools nothing from one study: its exact interval, and says so', () => {
    const answer = answered({ studies: studies.slice(0, 1) })
    expect(answer).toMatchObject({ estimate: null, prediction: null, tau2: null, leaveOneOut: [] })
    expect(answer.interval).toEqual(answer.studies[0]?.interval)
    expect(answer.notes[0]?.code).toBe('one-study')
  })

  it('pools nothing where nobody had the event: the exact interval of the sum', () => {
    const none = [8, 12, 20].map((total, index) => ({ id: String(index), events: 0, total }))
    const answer = answered({ studies: none, method: 'double-arcsine' })
    expect(answer.estimate).toBeNull()
    expect(answer.interval[0]).toBe(0)
    expect(answer.interval[1]).toBeCloseTo(1 - 0.025 ** (1 / 40), 12)
    expect(answer.notes[0]?.code).toBe('no-event-anywhere')
  })

  it('prints a table for people, with the notes in words', () => {
    const said = pool({ studies: studies.slice(0, 2) }).out
    expect(said).toContain('7 of 52')
    expect(said).toContain('Two studies only')
    expect(said).not.toContain('two-studies')
  })

  it.each([
    [{ studies: [{ id: 'a', events: 5, total: 4 }] }, 'studies[0].events', 'at most 4'],
    [{ studies: [{ id: 'a', events: 0, total: 0 }] }, 'studies[0].total', 'at least 1'],
    [{ studies: [{ id: 'a', events: 1.5, total: 4 }] }, 'studies[0].events', 'whole number'],
    [{ studies: [{ id: 'a', events: 1 }] }, 'studies[0].total', 'missing'],
    [{ studies: [] }, 'studies', 'at least one study'],
    [{ studies: [studies[0], studies[0]] }, 'studies[1].id', 'twice'],
    [{ studies, method: 'fixed' }, 'method', 'binomial-normal'],
    [{ studies, tau: 'DL' }, 'tau', 'likelihood'],
    [{ studies, weight: 1 }, 'weight', 'spelling'],
  ])('names the field that is wrong: %j', (input, path, words) => {
    const ran = pool(input, '--json')
    expect(ran.status).toBe(2)
    expect(problem(ran)).toMatchObject({ path, message: expect.stringContaining(words) })
  })
})
