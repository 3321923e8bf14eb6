/**
 * The calendar against RFC 5545 (Internet Calendaring and Scheduling Core Object Specification, 2009), read back by a
 * second parser, ical.js.
 */
import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker, type MakeEntry, type WantedEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { check as checkKind } from '#core/journal/kinds/check.ts'
import { discharge as dischargeKind } from '#core/journal/kinds/discharge.ts'
import { identity as identityKind } from '#core/journal/kinds/identity.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { owedOf } from '#core/owed/owed.ts'
import { type CalendarOptions, calendarOf } from '#documents/calendar/calendar.ts'

const now = '2026-03-05T16:00:00.000Z'
const name = 'Žofie; “Łatka”, die Größte 🐶\nzweite Zeile, die so lang ist, dass sie gefaltet werden muss'
const [medicine] = dischargeKind.example.medicines as [BodyOf<'discharge'>['medicines'][number]]

function course(make: MakeEntry, at = '2026-03-04T09:00:00.000Z'): Entry[] {
  const identity = make({ kind: 'identity', body: { ...identityKind.example, name: name.slice(0, 300) } })
  const booking = make({
    kind: 'booking',
    body: {
      side: 'LEFT',
      procedure: 'teca-lbo',
      agreement: null,
      plannedFor: { at, zone: 'Europe/London', precision: 'minute', by: 'person' },
      surgeon: 'person-surgeon',
      anaesthetist: null,
    },
  })
  const stamp = make({
    kind: 'theatre-stamp',
    at,
    body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
  })
  return [identity, booking, stamp]
}

function goesHome(
  make: MakeEntry,
  wanted: Partial<typeof medicine> = {},
  rest: Omit<WantedEntry<'discharge'>, 'kind' | 'body'> = {},
): Entry {
  const body: BodyOf<'discharge'> = {
    ...dischargeKind.example,
    medicines: [
      { ...medicine, times: ['08:00', '20:00'], firstDay: '2026-03-05', firstTime: '20:00', days: 28, ...wanted },
    ],
    nextVisit: null,
  }
  return make({ kind: 'discharge', at: now, body, ...rest })
}

type Closed = Parameters<typeof fileOf>[1]

function write(entries: readonly Entry[], closed: Closed = {}, options: CalendarOptions = {}): string {
  const file = fileOf(entries, closed)
  return calendarOf(file, owedOf(file, procedures, { rules: owedRules }), now, options)
}

type Read = { readonly events: readonly ICAL.Event[]; readonly calendar: ICAL.Component }

function read(text: string): Read {
  const calendar = new ICAL.Component(ICAL.parse(text))
  for (const zone of calendar.getAllSubcomponents('vtimezone')) ICAL.TimezoneService.register(zone)
  return { calendar, events: calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event)) }
}

function property(event: ICAL.Event, wanted: string): string {
  return String(event.component.getFirstPropertyValue(wanted))
}

function instants(event: ICAL.Event): string[] {
  if (!event.isRecurring()) return [event.startDate.toJSDate().toISOString()]
  const iterator = event.iterator()
  const found: string[] = []
  for (let next = iterator.next(); next; next = iterator.next()) found.push(next.toJSDate().toISOString())
  return found
}

const medicinesOf = ({ events }: Read) => events.filter((event) => event.summary.endsWith('medicine'))

describe('the calendar file', () => {
  const make = entryMaker()
  const entries = [...course(make), goesHome(make)]
  const text = write(entries)

  it('ends every line with CRLF and holds no bare line end (3.1)', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true)
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/)
  })

  it('folds at 75 octets, not characters, and never inside a character (3.1)', () => {
    const lines = text.split('\r\n')
    expect(lines.some((line) => line.startsWith(' '))).toBe(true)
    for (const line of lines) {
      expect(Buffer.byteLength(line, 'utf8')).toBeLessThanOrEqual(75)
      expect(line).not.toContain('\uFFFD')
    }
    // A name of four-octet characters only: a fold inside one would break it.
    const dogs = entryMaker()
    const many = dogs({ kind: 'identity', body: { ...identityKind.example, name: '🐕'.repeat(60) } })
    const folded = write([...course(dogs).slice(1), many, goesHome(dogs)])
    expect(folded.split('\r\n').every((line) => Buffer.byteLength(line, 'utf8') <= 75)).toBe(true)
    expect(read(folded).events[0]?.summary).toContain('🐕'.repeat(60))
  })

  it('escapes comma, semicolon, backslash and line end, so that the second parser reads the name back (3.3.11)', () => {
    expect(text).toContain('Žofie\\; “Łatka”\\,')
    expect(read(text).events[0]?.summary.startsWith(name)).toBe(true)
  })

  it('gives every event UID, DTSTAMP, SEQUENCE and DTSTART (3.6.1), each UID once', () => {
    const { events } = read(text)
    expect(events.length).toBeGreaterThan(8)
    for (const event of events) {
      expect(property(event, 'dtstamp')).toBe('2026-03-05T16:00:00Z')
      expect(Number(property(event, 'sequence'))).toBeGreaterThanOrEqual(0)
      expect(event.startDate).not.toBeNull()
    }
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length)
  })

  it('writes visits as whole days with an exclusive end: stitches 14 to 18 March', () => {
    const stitches = read(text).events.find(({ startDate }) => startDate.toString() === '2026-03-14')
    expect(stitches?.startDate.isDate).toBe(true)
    expect(stitches?.endDate.toString()).toBe('2026-03-19')
  })

  it('is the same to the byte for the same case and stamp, in any order of entries', () => {
    expect(write([...entries].reverse())).toBe(text)
  })

  it('says neither diagnosis nor drug unless asked', () => {
    expect(text).not.toMatch(/teca|meloxicam|ablation|infection|bulla|blink|pain/i)
    expect(write(entries, {}, { words: 'full' })).toContain('Meloxicam')
  })

  it('rings an alarm for medicine at its time, and before visits', () => {
    const { events } = read(text)
    const alarms = events.flatMap((event) => event.component.getAllSubcomponents('valarm'))
    expect(alarms.map((alarm) => String(alarm.getFirstPropertyValue('trigger')))).toEqual(
      expect.arrayContaining(['PT0S', '-PT15H']),
    )
  })
})

describe('medicine reminders', () => {
  it('stay at 08:00 and 20:00 on the wall across the change of 29 March 2026 in London', () => {
    const make = entryMaker()
    const file = read(write([...course(make), goesHome(make)]))
    const found = medicinesOf(file).flatMap(instants).sort()
    expect(found.length).toBe(55)
    expect(found.filter((at) => at.startsWith('2026-03-28') || at.startsWith('2026-03-29'))).toEqual([
      '2026-03-28T08:00:00.000Z',
      '2026-03-28T20:00:00.000Z',
      '2026-03-29T07:00:00.000Z',
      '2026-03-29T19:00:00.000Z',
    ])
    expect(file.calendar.getAllSubcomponents('vtimezone').length).toBe(1)
  })

  it('lose no dose to a night that skips 01:30: it is written at 02:30, one event for each dose (3.3.10)', () => {
    const make = entryMaker()
    const home = goesHome(make, { times: ['01:30'], firstDay: '2026-03-28', firstTime: '01:30', days: 3 })
    const found = medicinesOf(read(write([...course(make), home])))
    expect(found.flatMap(instants).sort()).toEqual([
      '2026-03-28T01:30:00.000Z',
      '2026-03-29T01:30:00.000Z',
      '2026-03-30T00:30:00.000Z',
    ])
    expect(found.map(({ startDate }) => startDate.toString()).sort()[1]).toBe('2026-03-29T02:30:00')
  })

  it.each([
    ['America/New_York', '2026-03-05', '2026-03-08T00:00:00Z', '13:00', '12:00'],
    ['America/New_York', '2026-10-30', '2026-11-01T00:00:00Z', '12:00', '13:00'],
    ['Europe/London', '2026-10-20', '2026-10-25T00:00:00Z', '07:00', '08:00'],
    ['Asia/Tokyo', '2026-03-05', '2026-03-29T00:00:00Z', '23:00', '23:00'],
    ['UTC', '2026-03-05', '2026-03-29T00:00:00Z', '08:00', '08:00'],
    ['Asia/Kathmandu', '2026-03-05', '2026-03-29T00:00:00Z', '02:15', '02:15'],
  ])('08:00 in %s from %s is right before and after the change', (zone, firstDay, change, before, after) => {
    const make = entryMaker()
    const home = goesHome(make, { times: ['08:00'], firstDay, firstTime: '08:00', days: 28 })
    const found = medicinesOf(read(write([...course(make), home], { zone }))).flatMap(instants)
    expect(found.length).toBe(28)
    for (const at of found) expect(at.slice(11, 16)).toBe(Date.parse(at) < Date.parse(change) ? before : after)
  })
})

describe('a visit that moves', () => {
  const stitches = (text: string) => {
    const found = read(text).events.filter(({ startDate, summary }) => startDate.isDate && summary.endsWith('visit'))
    return found.map((event) => ({
      uid: event.uid,
      sequence: Number(property(event, 'sequence')),
      from: event.startDate.toString(),
    }))
  }

  it('keeps its UID and raises its SEQUENCE (3.8.7.4)', () => {
    const make = entryMaker()
    const entries = course(make)
    const before = stitches(write(entries))
    const moved = make({
      kind: 'theatre-stamp',
      at: '2026-03-05T09:00:00.000Z',
      body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
      supersedes: [entries[2]?.id ?? ''],
      reason: 'It was the day after.',
    })
    const after = stitches(write([...entries, moved]))
    expect(after.map(({ uid }) => uid).sort()).toEqual(before.map(({ uid }) => uid).sort())
    for (const { uid, sequence, from } of before) {
      const then = after.find((event) => event.uid === uid)
      expect(then?.sequence).toBeGreaterThan(sequence)
      expect(then?.from).not.toBe(from)
    }
  })

  it('raises it again when the correction is withdrawn', () => {
    const make = entryMaker()
    const entries = course(make)
    const moved = make({
      kind: 'theatre-stamp',
      at: '2026-03-05T09:00:00.000Z',
      body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
      supersedes: [entries[2]?.id ?? ''],
      reason: 'It was the day after.',
    })
    const back = make({ kind: 'withdrawal', subject: moved.subject, withdraws: moved.id, reason: 'No.' })
    const sequences = [entries, [...entries, moved], [...entries, moved, back]].map(
      (all) => stitches(write(all))[0]?.sequence ?? -1,
    )
    expect(sequences[1]).toBeGreaterThan(sequences[0] ?? 0)
    expect(sequences[2]).toBeGreaterThan(sequences[1] ?? 0)
  })
})

describe('visits that fall together', () => {
  const days = (text: string) => {
    const found = read(text).events.filter(({ startDate, summary }) => startDate.isDate && summary.endsWith('visit'))
    return found.map((event) => ({
      uid: event.uid,
      status: property(event, 'status'),
      sequence: Number(property(event, 'sequence')),
      summary: event.summary,
      from: event.startDate.toString(),
      after: event.endDate.toString(),
    }))
  }
  const standing = (text: string) => days(text).filter(({ status }) => status !== 'CANCELLED')

  it('stand once: no two of them share a day, and each that stood by itself is cancelled under its UID', () => {
    const make = entryMaker()
    const text = write([...course(make), goesHome(make)])
    const sorted = standing(text).sort((a, b) => (a.from < b.from ? -1 : 1))
    expect(sorted.length).toBeGreaterThan(2)
    for (const [index, next] of sorted.slice(1).entries()) expect(next.from >= (sorted[index]?.after ?? '')).toBe(true)
    expect(days(text).some(({ status }) => status === 'CANCELLED')).toBe(true)
    expect(new Set(days(text).map(({ uid }) => uid)).size).toBe(days(text).length)
  })

  it('are tentative and ask to be booked until a day is agreed', () => {
    const make = entryMaker()
    const entries = course(make)
    const open = standing(write([...entries, goesHome(make)]))
    expect(open.every(({ status, summary }) => status === 'TENTATIVE' && summary.endsWith('book a visit'))).toBe(true)
    const home = goesHome(make)
    const agreed = { ...home, body: { ...(home.body as object), nextVisit: '2026-03-16' } } as Entry
    const booked = standing(write([...entries, agreed])).filter(({ status }) => status === 'CONFIRMED')
    expect(booked.map(({ from }) => from)).toEqual(['2026-03-16'])
    expect(booked[0]?.summary.endsWith('book a visit')).toBe(false)
  })

  it('when one was done and the other is still owed, the other comes back with a higher SEQUENCE', () => {
    const make = entryMaker()
    const entries = [...course(make), goesHome(make)]
    const stitches = make({
      kind: 'check',
      subject: { kind: 'ear', animal: 'animal-1', side: 'LEFT' },
      at: '2026-03-16T09:00:00.000Z',
      body: { ...checkKind.example, wound: 'closed', sutures: 'out', blink: 'not-assessed', tearTest: null },
    })
    const before = days(write(entries))
    const after = days(write([...entries, stitches]))
    for (const { uid, status, sequence } of after) {
      const then = before.find((event) => event.uid === uid)
      if (then && then.status !== status) expect(sequence).toBeGreaterThan(then.sequence)
    }
  })
})

describe('after a death', () => {
  it('everything is cancelled under its old UID with a higher SEQUENCE, and comes back when the entry is withdrawn', () => {
    const make = entryMaker()
    const entries = [...course(make), goesHome(make)]
    const death = make({ kind: 'death', at: '2026-03-10T10:00:00.000Z' })
    const back = make({ kind: 'withdrawal', subject: death.subject, withdraws: death.id, reason: 'Another dog.' })
    const before = read(write(entries)).events
    const after = read(write([...entries, death])).events
    const again = read(write([...entries, death, back])).events
    const uids = (events: readonly ICAL.Event[]) => events.map(({ uid }) => uid).sort()
    expect(uids(after)).toEqual(uids(before))
    for (const event of after) expect(property(event, 'status')).toBe('CANCELLED')
    const sequence = (events: readonly ICAL.Event[], uid: string) =>
      Number(property(events.find((event) => event.uid === uid) as ICAL.Event, 'sequence'))
    for (const { uid } of before) {
      expect(sequence(after, uid)).toBeGreaterThan(sequence(before, uid))
      expect(sequence(again, uid)).toBeGreaterThan(sequence(after, uid))
    }
    const standing = (events: readonly ICAL.Event[]) =>
      uids(events.filter((event) => property(event, 'status') !== 'CANCELLED'))
    expect(standing(again)).toEqual(standing(before))
    expect(standing(again).length).toBeGreaterThan(5)
  })

  it('a medicine that a corrected discharge no longer has is cancelled, not forgotten', () => {
    const make = entryMaker()
    const home = goesHome(make)
    const corrected = goesHome(
      make,
      { times: ['08:00'], firstTime: '08:00' },
      { supersedes: [home.id], reason: 'Once a day.' },
    )
    const events = medicinesOf(read(write([...course(make), home, corrected])))
    expect(events.map((event) => property(event, 'status')).sort()).toEqual(['CANCELLED', 'CONFIRMED'])
  })
})

describe('a dose that is brought down in steps', () => {
  const steps = [
    { fromDay: '2026-03-28', each: '1', times: ['08:00', '20:00'], onDays: 'every-day' as const },
    { fromDay: '2026-03-30', each: '0.5', times: ['08:00'], onDays: 'every-day' as const },
  ]
  const tapered = { firstDay: '2026-03-26', firstTime: '20:00', days: 6, steps }

  it('has a series for each step and clock time, and rings on the wall clock through the night of 29 March', () => {
    const make = entryMaker()
    const found = medicinesOf(read(write([...course(make), goesHome(make, tapered)])))
    expect(found).toHaveLength(5)
    expect(found.flatMap(instants).sort()).toEqual([
      '2026-03-26T20:00:00.000Z',
      '2026-03-27T08:00:00.000Z',
      '2026-03-27T20:00:00.000Z',
      '2026-03-28T08:00:00.000Z',
      '2026-03-28T20:00:00.000Z',
      '2026-03-29T07:00:00.000Z',
      '2026-03-29T19:00:00.000Z',
      '2026-03-30T07:00:00.000Z',
      '2026-03-31T07:00:00.000Z',
    ])
  })

  it('on every second day has a rule with an interval of two days (RFC 5545, 3.3.10)', () => {
    const make = entryMaker()
    const last = { fromDay: '2026-03-30', each: '0.5', times: ['08:00'], onDays: 'every-second-day' as const }
    const text = write([...course(make), goesHome(make, { ...tapered, days: 9, steps: [last] })])
    expect(text).toContain('RRULE:FREQ=DAILY;INTERVAL=2;COUNT=3')
    const rung = medicinesOf(read(text)).flatMap(instants).sort()
    expect(rung.slice(-3)).toEqual(['2026-03-30T07:00:00.000Z', '2026-04-01T07:00:00.000Z', '2026-04-03T07:00:00.000Z'])
  })

  it('stopped before its last step, rings no more: that step is cancelled under its own UID', () => {
    const make = entryMaker()
    const entries = [...course(make), goesHome(make, tapered)]
    const { drug, label, side } = medicine
    const stop = make({
      kind: 'medicine-change',
      at: '2026-03-28T10:00:00.000Z',
      body: {
        read: null,
        because: 'Vomits.',
        stops: [{ drug, label, side, fromDay: '2026-03-28', fromTime: '12:00' }],
        starts: [],
      },
    })
    const before = medicinesOf(read(write(entries)))
    const after = medicinesOf(read(write([...entries, stop])))
    expect(after.map(({ uid }) => uid).sort()).toEqual(before.map(({ uid }) => uid).sort())
    const confirmed = after.filter((event) => property(event, 'status') === 'CONFIRMED')
    expect(confirmed.flatMap(instants).sort().at(-1)).toBe('2026-03-28T08:00:00.000Z')
    expect(after.length - confirmed.length).toBe(2)
  })
})

describe('tablets at 08:00 and 20:00 over the night the clocks change', () => {
  it.each([
    ['Europe/London', '2026-10-24', ['07:00', '19:00', '08:00', '20:00']],
    ['Europe/London', '2026-03-28', ['08:00', '20:00', '07:00', '19:00']],
    ['America/New_York', '2026-10-31', ['12:00', '00:00', '13:00', '01:00']],
    ['America/New_York', '2026-03-07', ['13:00', '01:00', '12:00', '00:00']],
  ])('in %s from %s keep their wall times and lose or double none', (zone, firstDay, utc) => {
    const make = entryMaker()
    const home = goesHome(make, { firstDay, firstTime: '08:00', days: 2 })
    const found = medicinesOf(read(write([...course(make), home], { zone })))
    expect(
      found
        .flatMap(instants)
        .sort()
        .map((at) => at.slice(11, 16)),
    ).toEqual(utc)
    const walls = found.map(({ startDate }) => startDate.toString().slice(11, 16)).sort()
    expect(walls).toEqual(['08:00', '20:00'])
  })
})
