import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { addDays, daysBetween } from './calendar-day.ts'

describe('days between two days', () => {
  it('are those that the calendar library counts, over leap years and the turn of a century', () => {
    const first = '1899-12-30'
    for (let count = 0; count < 110_000; count += 37) {
      const day = addDays(first, count)
      const counted = Temporal.PlainDate.from(first).until(day, { largestUnit: 'days' }).days
      expect(daysBetween(first, day), day).toBe(counted)
      expect(daysBetween(day, first), day).toBe(0 - counted)
    }
  })

  it.each(['2026-02-30', '2025-02-29', '2026-13-01', '2026-00-10', 'tomorrow', ''])(
    'refuse a day that is none: "%s"',
    (day) => {
      expect(() => daysBetween('2026-01-01', day)).toThrow()
      expect(() => daysBetween(day, '2026-01-01')).toThrow()
    },
  )
})
