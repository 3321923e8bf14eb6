import { addDays } from '#core/time/calendar-day.ts'
import { offsetAt, type ZoneChange, zoneChanges } from '#core/time/zone-changes.ts'
import { contentLine } from './content-lines.ts'

/** `2026-03-01` as `20260301`. */
export function dateValue(day: string): string {
  return day.replaceAll('-', '')
}

/** `2026-03-01T08:00:00.000Z` as `20260301T080000Z`. */
export function utcValue(at: string): string {
  return `${dateValue(at.slice(0, 10))}T${at.slice(11, 19).replaceAll(':', '')}Z`
}

/** A wall-clock time of a zone, `20260301T080000`. */
export function localValue(day: string, time: string): string {
  return `${dateValue(day)}T${time.replace(':', '')}00`
}

/** The day after the last one: DTEND of whole days is not part of them (RFC 5545, 3.6.1). */
export function dayAfterLast(day: string): string {
  return dateValue(addDays(day, 1))
}

/** +HHMM, with seconds only for the offsets of old that have them. */
function offsetValue(seconds: number): string {
  const sign = seconds < 0 ? '-' : '+'
  const size = Math.abs(seconds)
  const two = (value: number) => String(value).padStart(2, '0')
  const rest = size % 60 === 0 ? '' : two(size % 60)
  return `${sign}${two(Math.floor(size / 3600))}${two(Math.floor((size % 3600) / 60))}${rest}`
}

/**
 * The VTIMEZONE of a zone for a stretch of time: one observance for each change of the clocks, led by the one in
 * force at its start, so that any reader finds the right offset without a table of zones.
 */
export function zoneLines(zone: string, from: string, until: string): string[] {
  const changes = zoneChanges(zone, from, until)
  const first = changes[0]
  const base = first === undefined || Date.parse(first.at) > Date.parse(from)
  return [
    'BEGIN:VTIMEZONE',
    contentLine('TZID', zone),
    ...(base
      ? observance({ local: '1970-01-01T00:00:00', before: offsetAt(zone, from), after: offsetAt(zone, from) })
      : []),
    ...changes.flatMap(observance),
    'END:VTIMEZONE',
  ]
}

function observance({ local, before, after }: Omit<ZoneChange, 'at'>): string[] {
  const kind = after > before ? 'DAYLIGHT' : 'STANDARD'
  return [
    `BEGIN:${kind}`,
    contentLine('DTSTART', localValue(local.slice(0, 10), local.slice(11, 16))),
    contentLine('TZOFFSETFROM', offsetValue(before)),
    contentLine('TZOFFSETTO', offsetValue(after)),
    `END:${kind}`,
  ]
}
