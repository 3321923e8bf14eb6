import { expect, it } from 'vitest'
import { weekdayOf } from '#core/time/calendar-day.ts'
import { closedAround, closedDaysAround } from './closed-days.ts'

/** As published for England and Wales (www.gov.uk/bank-holidays), 2026 and 2027, remembered. */
const published = [
  '2026-01-01',
  '2026-04-03',
  '2026-04-06',
  '2026-05-04',
  '2026-05-25',
  '2026-08-31',
  '2026-12-25',
  '2026-12-28',
  '2027-01-01',
  '2027-03-26',
  '2027-03-29',
  '2027-05-03',
  '2027-05-31',
  '2027-08-30',
  '2027-12-27',
  '2027-12-28',
]

it('the practice is closed on the bank holidays that are published', () => {
  const days = closedDaysAround('2026-11-29').map(({ day }) => day)
  expect(days.filter((day) => /^202[67]/.test(day))).toEqual(published)
})

it('the practice keeps the days that it wrote down, each once, and none falls on a weekend, in any year', () => {
  for (let year = 2025; year < 2080; year += 3) {
    const { days } = closedAround(`${year}-06-01`)
    expect(new Set(days).size).toBe(days.length)
    expect(days).toContain('2025-04-18')
    for (const day of days) expect(weekdayOf(day), day).toBeLessThan(6)
  }
})

it.each([
  ['2024', '2024-03-29'],
  ['2030', '2030-04-19'],
  ['2038', '2038-04-23'],
  ['2049', '2049-04-16'],
])('the practice keeps the Good Friday of %s as calendars print it', (year, day) => {
  const found = closedDaysAround(`${year}-06-01`).filter(({ because }) => because === 'Good Friday')
  expect(found.map((one) => one.day)).toContain(day)
})
