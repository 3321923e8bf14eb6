import { describe, expect, it } from 'vitest'
import { sayNearDay, sayNearInstant } from './say-near-day.ts'

describe('a day that somebody plans by', () => {
  it.each([
    ['2026-03-02', 'today, 2 March 2026'],
    ['2026-03-03', 'tomorrow, 3 March 2026'],
    ['2026-03-04', 'Wednesday, 4 March 2026'],
    ['2026-03-01', 'Sunday, 1 March 2026'],
  ])('%s is said as %s on 2 March 2026', (day, said) => {
    expect(sayNearDay(day, '2026-03-02')).toBe(said)
  })

  it('counts on the calendar of the clinic, not of the device', () => {
    const now = '2026-03-01T21:00:00.000Z'
    expect(sayNearInstant('2026-03-01T23:30:00.000Z', now, 'Asia/Tokyo')).toBe('today, 2 March 2026')
  })
})
