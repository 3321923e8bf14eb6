/**
 * The days on which clocks change, from the zone rules of the IANA database as the platform carries them:
 * London 29 March and 25 October 2026, New York 8 March and 1 November 2026, and a zone without changes.
 * Job notes, bad input 15: a dose interval goes by hours passed, a reminder at home by the wall clock.
 */
import { describe, expect, it } from 'vitest'
import type { Moment } from '#core/time/moment.ts'
import { minutesBetween, readMoment, sayMoment } from '#core/time/moment.ts'
import { dailyWallTimes, elapsedTimes, wallTime } from '#core/time/wall-times.ts'
import { zoneChanges } from '#core/time/zone-changes.ts'

const london = 'Europe/London'
const newYork = 'America/New_York'
const tokyo = 'Asia/Tokyo'

function read(text: string, zone: string): Moment {
  const moment = readMoment(text, zone)
  if ('because' in moment) throw new Error(moment.because)
  return moment
}

function clock(moments: readonly Moment[]): string[] {
  return moments.map((moment) => sayMoment(moment).split(', ')[1] ?? '')
}

describe('a six-hourly medicine in the ward goes by hours passed', () => {
  it.each([
    [london, '2026-03-28 22:00', ['22:00', '05:00', '11:00', '17:00']],
    [london, '2026-10-24 22:00', ['22:00', '03:00', '09:00', '15:00']],
    [newYork, '2026-03-07 22:00', ['22:00', '05:00', '11:00', '17:00']],
    [newYork, '2026-10-31 22:00', ['22:00', '03:00', '09:00', '15:00']],
    [tokyo, '2026-03-28 22:00', ['22:00', '04:00', '10:00', '16:00']],
  ])('in %s from %s', (zone, first, shown) => {
    const times = elapsedTimes(read(first, zone), 6, 4)
    expect(clock(times)).toEqual(shown)
    for (const [index, time] of times.slice(1).entries()) {
      expect(minutesBetween(times[index] as Moment, time)).toBe(360)
    }
  })
})

describe('a tablet at home stays on the wall clock', () => {
  const doses = (zone: string, firstDay: string) =>
    dailyWallTimes({ times: ['08:00', '20:00'], firstDay, firstTime: '08:00', days: 3, zone })

  it.each([
    [london, '2026-03-28', [12, 11, 12, 12, 12]],
    [london, '2026-10-24', [12, 13, 12, 12, 12]],
    [newYork, '2026-03-07', [12, 11, 12, 12, 12]],
    [newYork, '2026-10-31', [12, 13, 12, 12, 12]],
    [tokyo, '2026-03-28', [12, 12, 12, 12, 12]],
  ])('08:00 and 20:00 in %s from %s, whatever the hours between', (zone, firstDay, hours) => {
    const found = doses(zone, firstDay)
    expect(found.map(({ shown }) => shown)).toEqual(['08:00', '20:00', '08:00', '20:00', '08:00', '20:00'])
    const between = found
      .slice(1)
      .map(({ at }, index) => (Date.parse(at) - Date.parse(found[index]?.at ?? '')) / 3_600_000)
    expect(between).toEqual(hours)
  })

  it('01:30 in the night London skips it is taken at 02:30, the same instant as RFC 5545, 3.3.5, gives it', () => {
    expect(wallTime('2026-03-29', '01:30', london)).toEqual({
      day: '2026-03-29',
      time: '01:30',
      at: '2026-03-29T01:30:00.000Z',
      shown: '02:30',
      clock: 'skipped',
    })
  })

  it('01:30 in the night London has it twice is taken once, at the first', () => {
    expect(wallTime('2026-10-25', '01:30', london)).toMatchObject({ at: '2026-10-25T00:30:00.000Z', clock: 'twice' })
    const night = dailyWallTimes({
      times: ['01:30'],
      firstDay: '2026-10-24',
      firstTime: '01:30',
      days: 3,
      zone: london,
    })
    expect(night.map(({ at }) => at)).toEqual([
      '2026-10-24T00:30:00.000Z',
      '2026-10-25T00:30:00.000Z',
      '2026-10-26T01:30:00.000Z',
    ])
  })

  it('02:30 in the night New York skips it is taken at 03:30', () => {
    expect(wallTime('2026-03-08', '02:30', newYork)).toMatchObject({ shown: '03:30', clock: 'skipped' })
  })
})

describe('the changes of a zone', () => {
  it('are found with both offsets (London 2026: 29 March and 25 October, at 01:00 UTC)', () => {
    const changes = zoneChanges(london, '2026-01-01T00:00:00Z', '2026-12-31T00:00:00Z')
    expect(changes.slice(1)).toEqual([
      { at: '2026-03-29T01:00:00Z', before: 0, after: 3600, local: '2026-03-29T01:00:00' },
      { at: '2026-10-25T01:00:00Z', before: 3600, after: 0, local: '2026-10-25T02:00:00' },
    ])
  })

  it('are led by the one in force at the start', () => {
    expect(zoneChanges(newYork, '2026-05-01T00:00:00Z', '2026-06-01T00:00:00Z')).toMatchObject([
      { at: '2026-03-08T07:00:00Z', after: -14400 },
    ])
  })

  it('are none for UTC', () => {
    expect(zoneChanges('UTC', '2026-01-01T00:00:00Z', '2027-01-01T00:00:00Z')).toEqual([])
  })
})
