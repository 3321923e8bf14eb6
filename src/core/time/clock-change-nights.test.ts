import { describe, expect, it } from 'vitest'
import { clockToldApart, sayMoment, wallClock } from './moment.ts'
import { elapsedTimes } from './wall-times.ts'

/**
 * The nights of 2026 by the published rules: the EU's summer time ends on the last Sunday of October and begins on the
 * last Sunday of March, both at 01:00 UTC (Directive 2000/84/EC, the UK alike); that of the United States begins on the
 * second Sunday of March and ends on the first Sunday of November, both at 02:00 local time (Energy Policy Act of 2005).
 */
const nights = [
  ['Europe/London', 'October', '2026-10-24T19:30:00.000Z', ['20:30+01:00', '01:30+00:00', '07:30+00:00']],
  ['Europe/London', 'March', '2026-03-28T19:30:00.000Z', ['19:30+00:00', '02:30+01:00', '08:30+01:00']],
  ['America/New_York', 'November', '2026-11-01T00:30:00.000Z', ['20:30-04:00', '01:30-05:00', '07:30-05:00']],
  ['America/New_York', 'March', '2026-03-08T01:30:00.000Z', ['20:30-05:00', '03:30-04:00', '09:30-04:00']],
] as const

describe('a six-hourly drug in the ward', () => {
  it.each(nights)(
    'in %s in the night of %s stays six hours apart, and each time is shown with its offset',
    (zone, _, at, shown) => {
      const doses = elapsedTimes({ at, zone, precision: 'minute', by: 'person' }, 6, 3)
      const instants = doses.map((dose) => Date.parse(dose.at))
      expect(instants.slice(1).map((instant, place) => (instant - (instants[place] ?? 0)) / 3_600_000)).toEqual([6, 6])
      const said = doses.map((dose) => wallClock(dose).toString({ timeZoneName: 'never', smallestUnit: 'minute' }))
      expect(said.map((text) => text.slice(11))).toEqual(shown)
    },
  )

  it('tells the two showings of 01:30 apart wherever a time is said, and adds nothing to a time that is shown once', () => {
    const said = (at: string) => sayMoment({ at, zone: 'Europe/London', precision: 'minute', by: 'clock' })
    expect(said('2026-10-25T00:30:00.000Z')).toBe('25 October 2026, 01:30+01:00')
    expect(said('2026-10-25T01:30:00.000Z')).toBe('25 October 2026, 01:30+00:00')
    expect(said('2026-10-25T02:00:00.000Z')).toBe('25 October 2026, 02:00')
    expect(said('2026-03-29T01:30:00.000Z')).toBe('29 March 2026, 02:30')
    expect(clockToldApart('2026-11-01T05:30:00.000Z', 'America/New_York')).toBe('01:30-04:00')
  })
})
