import { describe, expect, it } from 'vitest'
import { closedRuns, type Leave, standsFor } from './leave.ts'

const leave = (person: string, from: string, until: string, deputy: string): Leave => ({ person, from, until, deputy })

describe('whoever stands in', () => {
  const leaves = [
    leave('holm', '2026-07-01', '2026-07-14', 'adeyemi'),
    leave('adeyemi', '2026-07-10', '2026-07-20', 'moretti'),
    leave('moretti', '2026-07-14', '2026-07-14', 'holm'),
  ]

  it('is the deputy from the first day to the last, and the person themselves before and after', () => {
    expect(standsFor('holm', '2026-06-30', leaves)).toBe('holm')
    expect(standsFor('holm', '2026-07-01', leaves)).toBe('adeyemi')
    expect(standsFor('holm', '2026-07-15', leaves)).toBe('holm')
    expect(standsFor('castellane', '2026-07-01', leaves)).toBe('castellane')
  })

  it("is the deputy's deputy while the deputy is away too", () => {
    expect(standsFor('holm', '2026-07-10', leaves)).toBe('moretti')
    expect(standsFor('adeyemi', '2026-07-20', leaves)).toBe('moretti')
  })

  it('is the person when deputies are away in a ring: nothing is shown to nobody', () => {
    expect(standsFor('holm', '2026-07-14', leaves)).toBe('holm')
    expect(standsFor('moretti', '2026-07-14', leaves)).toBe('moretti')
  })
})

describe('the closed days of a span', () => {
  const closed = { weekdays: [6, 7], days: ['2026-12-25'] }

  it('are its weekends and holidays, those that touch as one run', () => {
    // 25 December 2026 is a Friday: the holiday and the weekend after it are one.
    expect(closedRuns({ from: '2026-12-16', until: '2026-12-28' }, closed, [])).toEqual([
      { from: '2026-12-19', until: '2026-12-20' },
      { from: '2026-12-25', until: '2026-12-27' },
    ])
  })

  it('leave a leave that is there already as it is', () => {
    const away = [{ from: '2026-12-20', until: '2026-12-26' }]
    expect(closedRuns({ from: '2026-12-16', until: '2026-12-28' }, closed, away)).toEqual([
      { from: '2026-12-19', until: '2026-12-19' },
      { from: '2026-12-27', until: '2026-12-27' },
    ])
  })

  it('are none where the house is always open', () => {
    expect(closedRuns({ from: '2026-12-16', until: '2026-12-28' }, { weekdays: [], days: [] }, [])).toEqual([])
  })
})
