import { contentLine, escapeText } from './content-lines.ts'

/** When an event is: whole days, an instant or stretch in UTC, or a time on the wall clock of a zone. */
export type EventTime =
  | { readonly kind: 'days'; readonly from: string; readonly afterLast: string }
  | { readonly kind: 'utc'; readonly from: string; readonly until: string | null }
  | {
      readonly kind: 'wall'
      readonly zone: string
      readonly from: string
      readonly daily: number
      readonly everyDays?: number
    }

export type CalendarEvent = {
  readonly uid: string
  readonly sequence: number
  /** Tentative while no day is booked (RFC 5545, 3.8.1.11). */
  readonly status: 'CONFIRMED' | 'TENTATIVE' | 'CANCELLED'
  readonly summary: string
  readonly description: string | null
  readonly time: EventTime
  /** How long before its start the alarm rings, as a duration of RFC 5545; null for none. */
  readonly alarm: string | null
}

/** One VEVENT. `stamp` is when the file was made. */
export function eventLines(event: CalendarEvent, stamp: string): string[] {
  const { uid, sequence, status, summary, description, time, alarm } = event
  return [
    'BEGIN:VEVENT',
    contentLine('UID', uid),
    contentLine('DTSTAMP', stamp),
    contentLine('SEQUENCE', String(sequence)),
    contentLine('STATUS', status),
    ...timeLines(time),
    contentLine('SUMMARY', escapeText(summary)),
    ...(description === null ? [] : [contentLine('DESCRIPTION', escapeText(description))]),
    'CLASS:PRIVATE',
    'TRANSP:TRANSPARENT',
    ...(alarm === null || status === 'CANCELLED' ? [] : alarmLines(alarm, summary)),
    'END:VEVENT',
  ]
}

function timeLines(time: EventTime): string[] {
  switch (time.kind) {
    case 'days':
      return [contentLine('DTSTART;VALUE=DATE', time.from), contentLine('DTEND;VALUE=DATE', time.afterLast)]
    case 'utc':
      return [contentLine('DTSTART', time.from), ...(time.until === null ? [] : [contentLine('DTEND', time.until)])]
    case 'wall':
      return [
        contentLine(`DTSTART;TZID=${time.zone}`, time.from),
        ...(time.daily > 1 ? [contentLine('RRULE', ruleOf(time.daily, time.everyDays ?? 1))] : []),
      ]
  }
}

/** RFC 5545, 3.3.10: an interval of one day is not written. */
function ruleOf(count: number, everyDays: number): string {
  return `FREQ=DAILY;${everyDays > 1 ? `INTERVAL=${everyDays};` : ''}COUNT=${count}`
}

function alarmLines(before: string, summary: string): string[] {
  return [
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    contentLine('DESCRIPTION', escapeText(summary)),
    contentLine('TRIGGER', before),
    'END:VALARM',
  ]
}
