import { describe, expect, it } from 'vitest'
import { problem, quietEar } from './run-for-tests.ts'

type Line = {
  readonly type: string
  readonly register?: string
  readonly id?: string
  readonly header?: { stream: string }
}
const linesOf = (text: string): Line[] =>
  text
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line))
const streamsOf = (text: string) => [...new Set(linesOf(text).flatMap(({ header }) => header?.stream ?? []))].sort()

/** A practice that is open keeps a register of what its own cases drew. */
const methadone = 'register:methadone|10 mg/mL|injection'

describe('the invented practice on the command line', () => {
  it('is written as it is opened on a day, the same bytes every time, closed on the holidays around that day', () => {
    const { out, status } = quietEar(['demo', '--live', '--today', '2026-11-29'])
    expect(status).toBe(0)
    expect(quietEar(['demo', '--live', '--today', '29 November 2026']).out).toBe(out)
    expect(streamsOf(out)).toEqual([
      'case:barley',
      'case:hazel',
      'case:juniper',
      'case:moss',
      'case:rowan',
      'case:sorrel',
      'case:tansy',
      'case:teasel',
      'clinic',
      methadone,
    ])
    const closed = linesOf(out).flatMap(({ register, id }) => (register === 'closed-day' ? [id] : []))
    expect(closed).toEqual(expect.arrayContaining(['2025-12-25', '2026-12-28', '2027-03-26']))
    expect(quietEar(['demo', '--live', '--today', '2026-11-30']).out).not.toBe(out)
  })

  it('gives one living case alone, and names every case', () => {
    const { out } = quietEar(['demo', '--live', '--today', '2026-11-29', '--case', 'teasel'])
    expect(streamsOf(out)).toEqual(['case:teasel', 'clinic', methadone])
    const names = quietEar(['demo', '--list', '--json']).json() as { name: string; course: string }[]
    expect(names.map(({ name, course }) => `${name} ${course}`)).toEqual([
      'spaniel finished',
      'cat finished',
      'barley living',
      'hazel living',
      'juniper living',
      'rowan living',
      'sorrel living',
      'teasel living',
    ])
  })

  it('is refused for a day that does not exist, and where the living cases were not asked for', () => {
    const refused = (...args: string[]) => {
      const ran = quietEar(['demo', ...args])
      return [ran.status, problem(ran).path]
    }
    expect(refused('--live', '--today', '2026-02-30')).toEqual([2, 'today'])
    expect(refused('--live', '--today', 'March 2026')).toEqual([2, 'today'])
    expect(refused('--live', '--today', '2024-03-01')).toEqual([2, 'today'])
    expect(refused('--today', '2026-03-01')).toEqual([2, 'today'])
    expect(refused('--case', 'teasel')).toEqual([2, 'case'])
    expect(refused('--case', 'nobody', '--live')).toEqual([2, 'case'])
  })
})
