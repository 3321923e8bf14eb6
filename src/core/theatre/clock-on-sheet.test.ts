import { describe, expect, it } from 'vitest'
import { clockOnSheet } from './clock-on-sheet.ts'

const zone = 'Europe/London'
const now = '2026-12-31T12:00:00.000Z'
const at = (text: string, begins: string | null = '09:00', day = '2026-03-10') => {
  const read = clockOnSheet(text, { day, begins, zone, now })
  return 'moment' in read ? read.moment.at : read.because
}

describe('a clock time on a sheet of paper', () => {
  it.each(['9:05', '09:05', '0905', '905', '09.05', ' 9:05 '])('is read as people write it: %s', (text) => {
    expect(at(text)).toBe('2026-03-10T09:05:00.000Z')
  })

  it.each(['', '9', '25:00', '09:61', 'nine', '09:05:30', '-9:05'])('is not guessed from %j', (text) => {
    expect(at(text)).toBe('not-a-time')
  })

  it('is known to the minute, by a person', () => {
    expect(clockOnSheet('10:00', { day: '2026-03-10', begins: null, zone, now })).toEqual({
      moment: { at: '2026-03-10T10:00:00.000Z', zone, precision: 'minute', by: 'person' },
    })
  })

  it('goes over midnight with the operation, and not because one line is a little earlier than the first', () => {
    expect(at('00:40', '22:15')).toBe('2026-03-11T00:40:00.000Z')
    expect(at('08:50', '09:00')).toBe('2026-03-10T08:50:00.000Z')
    expect(at('00:40', null)).toBe('2026-03-10T00:40:00.000Z')
  })

  it('that the clocks skipped is refused, and one they showed twice asks which', () => {
    expect(at('01:30', '00:10', '2026-03-29')).toBe('no-such-local-time')
    expect(clockOnSheet('01:30', { day: '2026-10-25', begins: '00:10', zone, now })).toEqual({
      because: 'local-time-twice',
      about: { given: '01:30', readings: '01:30+01:00, 01:30+00:00' },
    })
    expect(at('01:30+01:00', '00:10', '2026-10-25')).toBe('2026-10-25T00:30:00.000Z')
    expect(at('01:30+00:00', '00:10', '2026-10-25')).toBe('2026-10-25T01:30:00.000Z')
  })

  it('that has not been yet is refused', () => {
    const sheet = { day: '2026-03-10', begins: '09:00', zone, now: '2026-03-10T11:00:00.000Z' }
    expect(clockOnSheet('11:30', sheet)).toEqual({
      because: 'in-the-future',
      about: { given: '11:30', day: '2026-03-10' },
    })
  })
})
