import { describe, expect, it } from 'vitest'
import { gatherIsolates, type IsolateRow } from './gather-isolates.ts'

const method = { first: { kind: 'calendar-year' }, sites: 'together', from: null, until: null } as const
const row = (day: string, tested: string, more: Partial<IsolateRow<string>> = {}): IsolateRow<string> => {
  return { animal: 'A', host: 'dog', organism: 'escherichia-coli', day, site: null, key: null, tested, ...more }
}

describe('rows gathered to isolates', () => {
  it('puts the drugs of one isolate together, also when others stand between them', () => {
    const gathering = gatherIsolates<string>(method)
    gathering.add(row('2026-02-01', 'cefalexin'))
    gathering.add(row('2026-02-01', 'cefalexin', { animal: 'B' }))
    expect(gathering.add(row('2026-02-01', 'amikacin'))).toBe('kept')
    expect(gathering.isolates().map(({ animal, tested }) => [animal, tested])).toEqual([
      ['A', ['cefalexin', 'amikacin']],
      ['B', ['cefalexin']],
    ])
  })

  it('keeps only the first of a year in memory, whatever the order of the rows', () => {
    const gathering = gatherIsolates<string>(method)
    gathering.add(row('2026-05-01', 'later'))
    gathering.add(row('2026-02-01', 'first'))
    expect(gathering.add(row('2026-03-01', 'repeat'))).toBe('repeat')
    gathering.add(row('2025-12-31', 'year before'))
    expect(gathering.isolates().map(({ day, tested }) => [day, tested[0]])).toEqual([
      ['2026-02-01', 'first'],
      ['2025-12-31', 'year before'],
    ])
  })

  it('takes two isolates of one day as two, and of them the one that stands first', () => {
    const gathering = gatherIsolates<string>(method)
    gathering.add(row('2026-02-01', 'first', { key: '1' }))
    expect(gathering.add(row('2026-02-01', 'second', { key: '2' }))).toBe('repeat')
    const all = gatherIsolates<string>({ ...method, first: { kind: 'episode', days: 365 } })
    all.add(row('2026-02-01', 'first', { key: '1' }))
    all.add(row('2026-02-01', 'second', { key: '2' }))
    expect(all.isolates()).toHaveLength(2)
  })

  it('leaves days outside the period out before the first of a year is chosen', () => {
    const gathering = gatherIsolates<string>({ ...method, from: '2026-01-01' })
    expect(gathering.add(row('2025-12-31', 'before'))).toBe('outside-period')
    expect(gathering.add(row('2026-01-01', 'within'))).toBe('kept')
  })
})
