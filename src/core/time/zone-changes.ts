import { Temporal } from 'temporal-polyfill'

/** One change of a zone's offset: the instant, both offsets in seconds, and the local time on which it falls before it. */
export type ZoneChange = {
  readonly at: string
  readonly before: number
  readonly after: number
  /** Local time of the change, by the offset in force until then: `2026-03-29T01:00:00`. */
  readonly local: string
}

const nanoseconds = 1_000_000_000

/**
 * Every change of offset that touches a stretch of time, led by the change that made the offset in force at its
 * start. A zone that never changes gives an empty list.
 */
export function zoneChanges(zone: string, from: string, until: string): ZoneChange[] {
  const start = Temporal.Instant.from(from).toZonedDateTimeISO(zone)
  const end = Temporal.Instant.from(until)
  const changes: ZoneChange[] = []
  // A change exactly at the start counts as before it.
  let at = start.add({ nanoseconds: 1 }).getTimeZoneTransition('previous') ?? start.getTimeZoneTransition('next')
  while (at !== null && Temporal.Instant.compare(at.toInstant(), end) <= 0) {
    changes.push(changeAt(at, zone))
    at = at.getTimeZoneTransition('next')
  }
  return changes
}

/** The offset of a zone at an instant, in seconds east of UTC. */
export function offsetAt(zone: string, at: string): number {
  return Temporal.Instant.from(at).toZonedDateTimeISO(zone).offsetNanoseconds / nanoseconds
}

function changeAt(at: Temporal.ZonedDateTime, zone: string): ZoneChange {
  const before = at.toInstant().subtract({ nanoseconds: 1 }).toZonedDateTimeISO(zone).offsetNanoseconds
  const local = at.toInstant().toZonedDateTimeISO('UTC').toPlainDateTime().add({ nanoseconds: before })
  return {
    at: at.toInstant().toString(),
    before: before / nanoseconds,
    after: at.offsetNanoseconds / nanoseconds,
    local: local.toString({ smallestUnit: 'second' }),
  }
}
