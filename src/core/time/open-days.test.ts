import { describe, expect, it } from 'vitest'
import { addDays, dayAfter, daysBetween, endOfDay, startOfDay } from './calendar-day.ts'
import { isOpen, moveVisit } from './open-days.ts'

const weekend = { weekdays: [6, 7], days: [] }

describe('a visit and the days the clinic is closed', () => {
  it('keeps a window that begins and ends on open days', () => {
    expect(moveVisit({ from: '2026-03-13', until: '2026-03-17' }, weekend, '2026-03-05').moved).toBe('kept')
  })

  it('moves earlier when its whole window is closed', () => {
    const visit = moveVisit({ from: '2026-03-14', until: '2026-03-15' }, weekend, '2026-03-05')
    expect(visit).toEqual({ from: '2026-03-13', until: '2026-03-13', moved: 'earlier' })
  })

  it('stays where it is, and says so, when nothing before its limit is open', () => {
    const always = { weekdays: [1, 2, 3, 4, 5, 6, 7], days: [] }
    const visit = moveVisit({ from: '2026-03-14', until: '2026-03-15' }, always, '2026-03-05')
    expect(visit).toEqual({ from: '2026-03-14', until: '2026-03-15', moved: 'nowhere' })
  })

  it('knows single closed days', () => {
    expect(isOpen('2026-12-25', { weekdays: [], days: ['2026-12-25'] })).toBe(false)
  })
})

describe('days on the calendar', () => {
  it('become the last of a shorter month', () => {
    expect(dayAfter('2026-08-31', { count: 6, unit: 'months' })).toBe('2027-02-28')
    expect(dayAfter('2024-02-29', { count: 12, unit: 'months' })).toBe('2025-02-28')
  })

  it('are counted across a leap day', () => {
    expect(addDays('2028-02-28', 2)).toBe('2028-03-01')
    expect(daysBetween('2028-02-28', '2028-03-01')).toBe(2)
  })

  it('have 23 hours when the clocks go forward', () => {
    const length =
      Date.parse(endOfDay('2026-03-29', 'Europe/London')) - Date.parse(startOfDay('2026-03-29', 'Europe/London'))
    expect(length).toBe(23 * 3_600_000 - 1000)
  })
})
