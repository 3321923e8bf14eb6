import { describe, expect, it } from 'vitest'
import { afterMinutes, type Moment, minutesBetween, readMoment, sayMoment } from './moment.ts'

const zone = 'Europe/London'

function read(text: string, where = zone): Moment {
  const moment = readMoment(text, where)
  if ('because' in moment) throw new Error(moment.because)
  return moment
}

describe('a moment', () => {
  it('keeps how finely it is known', () => {
    expect(sayMoment(read('2019'))).toBe('2019')
    expect(sayMoment(read('March 2024'))).toBe('March 2024')
    expect(sayMoment(read('5 Mar 2024'))).toBe('5 March 2024')
    expect(sayMoment(read('2024-03-05 14:20'))).toBe('5 March 2024, 14:20')
  })

  it('reads back what it says, also with a time of day', () => {
    expect(read('5 March 2024, 14:20')).toEqual(read('2024-03-05 14:20'))
    expect(readMoment('25 October 2026, 01:30', zone)).toMatchObject({
      because: 'local-time-twice',
      given: '25 October 2026, 01:30',
    })
    expect(readMoment('31 April 2024, 14:20', zone)).toMatchObject({ because: 'not-a-moment' })
  })

  it('is refused when day and month could be swapped', () => {
    expect(readMoment('05/03/2024', zone)).toEqual({
      because: 'day-or-month-first',
      given: '05/03/2024',
      readings: ['05 March 2024', '03 May 2024'],
    })
  })

  it('is refused when the clocks skipped it (London, 29 March 2026, 01:30)', () => {
    expect(readMoment('2026-03-29 01:30', zone)).toMatchObject({ because: 'no-such-local-time' })
  })

  it('is refused with both offsets when the clocks showed it twice (London, 25 October 2026, 01:30)', () => {
    expect(readMoment('2026-10-25 01:30', zone)).toEqual({
      because: 'local-time-twice',
      given: '2026-10-25 01:30',
      zone,
      readings: ['2026-10-25T01:30:00+01:00', '2026-10-25T01:30:00+00:00'],
    })
  })

  it('refuses nonsense, impossible days and unknown zones', () => {
    expect(readMoment('2026-02-30', zone)).toMatchObject({ because: 'not-a-moment' })
    expect(readMoment('yesterday', zone)).toMatchObject({ because: 'not-a-moment' })
    expect(readMoment('2026', 'Mars/Olympus')).toMatchObject({ because: 'unknown-zone' })
  })

  it('measures real time across a clock change: six hours are six hours', () => {
    const evening = read('2026-03-28 22:00')
    const next = afterMinutes(evening, 6 * 60)
    expect(sayMoment(next)).toBe('29 March 2026, 05:00')
    expect(minutesBetween(evening, next)).toBe(360)
  })
})
