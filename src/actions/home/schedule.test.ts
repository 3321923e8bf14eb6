import { describe, expect, it } from 'vitest'
import { InputError } from '../input.ts'
import { type ScheduledItem, schedule, scheduleCalendar } from './schedule.ts'

const operation = {
  at: '2026-03-04T09:00:00+00:00',
  zone: 'Europe/London',
  procedure: 'teca-lbo',
  side: 'LEFT',
  species: 'dog',
}

function item(input: unknown, start: string): ScheduledItem {
  const found = schedule(input).owed.find(({ id }) => id.startsWith(start))
  if (!found) throw new Error(`${start} is not owed: ${schedule(input).owed.map(({ id }) => id)}`)
  return found
}

function refusal(input: unknown): InputError {
  try {
    schedule(input)
  } catch (error) {
    if (error instanceof InputError) return error
    throw error
  }
  throw new Error('It was not refused.')
}

describe('schedule', () => {
  it('gives dates in RFC 3339 with the offset of their own day', () => {
    const recheck = item({ operation }, 'recheck-4-to-6-weeks')
    expect([recheck.dueFrom, recheck.dueBy]).toEqual(['2026-04-01T00:00:00+01:00', '2026-04-15T23:59:59+01:00'])
  })

  it('names what, who, why and sources with how each is known', () => {
    for (const one of schedule({ operation }).owed) {
      expect(one.what).not.toBe('')
      expect(['surgeon', 'nurse', 'owner']).toContain(one.who)
      expect(one.why).not.toBe('')
      expect(one.sources[0]).toMatchObject({ id: expect.any(String), citation: expect.any(String) })
    }
    expect(item({ operation }, 'suture-check').sources[0]?.known).toBe('common-practice')
    expect(item({ operation }, 'wound-week-4').sources[0]?.known).toBe('read')
  })

  it('moves visits off weekends unless told that they are open, and off closed days', () => {
    expect(item({ operation }, 'suture-check').dueFrom).toBe('2026-03-16T00:00:00+00:00')
    const open = { operation, policy: { closedWeekdays: [] } }
    expect(item(open, 'suture-check').dueFrom).toBe('2026-03-14T00:00:00+00:00')
    const closed = { ...open, closed: ['2026-03-18', '2026-03-17'] }
    expect(item(closed, 'suture-check').dueBy).toBe('2026-03-16T23:59:59+00:00')
    expect(item(closed, 'suture-check').why).toContain('Closed days')
  })

  it('owes nothing before the operation when it is done', () => {
    for (const one of schedule({ operation }).owed) {
      expect(Date.parse(one.dueFrom)).toBeGreaterThan(Date.parse(operation.at))
    }
  })

  it('asks for baseline, consent and the last meal while it is only booked', () => {
    const booked = {
      operation: { ...operation, stage: 'booked' },
      animal: { weight: { value: 12, unit: 'kg' }, born: '2018-05-01' },
    }
    expect(item(booked, 'last-meal').dueBy).toBe('2026-03-04T05:00:00+00:00')
    expect(schedule(booked).owed.map(({ code }) => code)).toContain('baseline-before-premedication')
  })

  it('never leaves an eye without a blink unseen for two weeks', () => {
    const findings = { at: '2026-03-16T10:00:00Z', blink: { LEFT: 'absent' } }
    const eye = item({ operation, findings }, 'eye:')
    expect(Date.parse(eye.dueBy) - Date.parse(findings.at)).toBeLessThan(15 * 86_400_000)
    expect(eye.why).toContain('no blink')
  })

  it('reads a tear test below 10 in mm or mm/min the same way', () => {
    for (const unit of ['mm', 'mm/min']) {
      const findings = { at: '2026-03-16T10:00:00Z', tearTest: { LEFT: { value: 6, unit } } }
      expect(item({ operation, findings }, 'eye:').why).toContain('6 mm/min')
    }
  })

  it('calls a missing blink within eight hours of bupivacaine a possible block effect', () => {
    const findings = { blink: { LEFT: 'absent' }, block: { drug: 'bupivacaine', at: '2026-03-04T08:45:00Z' } }
    const look = item({ operation, findings }, 'block:')
    expect(look.dueFrom).toBe('2026-03-04T16:45:00+00:00')
    expect(look.reasons).toEqual(['possible-block-effect'])
    expect(item({ operation, findings }, 'lubricate:').why).toContain('not graded')
    expect(schedule({ operation, findings }).owed.map(({ code }) => code)).not.toContain('eye-at-risk-look')
  })

  it('keeps home tablets on the wall clock and ward doses by hours passed across 29 March 2026', () => {
    const { medicines } = schedule({
      operation,
      medicines: [
        { drug: 'carprofen', times: ['08:00', '20:00'], days: 2, firstDay: '2026-03-28', each: '0.5' },
        { drug: 'methadone', everyHours: 6, from: '2026-03-28T22:00:00Z', doses: 3 },
      ],
    })
    expect(medicines[0]?.doses).toEqual([
      '2026-03-28T08:00:00+00:00',
      '2026-03-28T20:00:00+00:00',
      '2026-03-29T08:00:00+01:00',
      '2026-03-29T20:00:00+01:00',
    ])
    expect(medicines[0]?.tablets).toEqual({ total: '2', handOut: '2' })
    expect(medicines[1]?.doses).toEqual([
      '2026-03-28T22:00:00+00:00',
      '2026-03-29T05:00:00+01:00',
      '2026-03-29T11:00:00+01:00',
    ])
  })

  it('counts a dose that is brought down in steps, also on every second day, on the wall clock through the change', () => {
    const taper = {
      drug: 'exampline',
      times: ['08:00', '20:00'],
      days: 8,
      firstDay: '2026-03-27',
      each: '1',
      steps: [
        { fromDay: '2026-03-28', times: ['08:00'], each: '1' },
        { fromDay: '2026-03-30', times: ['08:00'], each: '0.5', onDays: 'every-second-day' },
      ],
    }
    const [course] = schedule({ operation, medicines: [taper] }).medicines
    expect(course?.doses).toEqual([
      '2026-03-27T08:00:00+00:00',
      '2026-03-27T20:00:00+00:00',
      '2026-03-28T08:00:00+00:00',
      '2026-03-29T08:00:00+01:00',
      '2026-03-30T08:00:00+01:00',
      '2026-04-01T08:00:00+01:00',
      '2026-04-03T08:00:00+01:00',
    ])
    expect(course?.tablets).toEqual({ total: '5.5', handOut: '6' })
    expect(scheduleCalendar({ operation, medicines: [taper] }, '2026-03-04T10:00:00.000Z')).toContain(
      'INTERVAL=2;COUNT=3',
    )
    const plainly = { drug: 'exampline', times: ['08:00'], days: 2, firstDay: '2026-03-27', each: '1' }
    expect(schedule({ operation, medicines: [{ ...plainly, steps: [] }] })).toEqual(
      schedule({ operation, medicines: [plainly] }),
    )
  })

  it.each([
    ['before the first day', { fromDay: '2026-03-27', times: ['08:00'], each: '1' }, 'medicines[0].steps[0].fromDay'],
    ['after the last day', { fromDay: '2026-04-04', times: ['08:00'], each: '1' }, 'medicines[0].steps[0].fromDay'],
    ['without tablets', { fromDay: '2026-03-29', times: ['08:00'] }, 'medicines[0].steps[0].each'],
    [
      'on days we do not know',
      { fromDay: '2026-03-29', times: ['08:00'], onDays: 'often' },
      'medicines[0].steps[0].onDays',
    ],
  ])('refuses a step %s, at its field', (_, step, path) => {
    const medicine = { drug: 'x', times: ['08:00'], days: 8, firstDay: '2026-03-27', each: '1', steps: [step] }
    expect(refusal({ operation, medicines: [medicine] }).path).toBe(path)
  })

  it('says what the clocks do to a dose at 01:30', () => {
    const night = { drug: 'gel', times: ['01:30'], days: 1, firstDay: '2026-03-29' }
    const said = schedule({ operation, medicines: [night] }).findings.find(({ code }) => code === 'clock-skipped')
    expect(said?.text).toContain('02:30')
  })

  it('writes a calendar whose UIDs stay when a named case moves', () => {
    const uids = (text: string) => text.match(/^UID:.*$/gm)?.sort()
    const stamp = '2026-03-04T12:00:00.000Z'
    const before = scheduleCalendar({ case: 'bella', operation }, stamp)
    const after = scheduleCalendar({ case: 'bella', operation: { ...operation, at: '2026-03-05T09:00:00Z' } }, stamp)
    expect(uids(after)).toEqual(uids(before))
    expect(after).not.toBe(before)
    expect(uids(scheduleCalendar({ case: 'max', operation }, stamp))).not.toEqual(uids(before))
  })
})

describe('schedule refuses', () => {
  it.each([
    [{ operation: { ...operation, at: '2026-03-04T09:00:00' } }, 'no-offset', 'operation.at'],
    [{ operation: { ...operation, at: '4 March 2026' } }, 'wrong-time', 'operation.at'],
    [{ operation: { ...operation, at: '2026-02-30T09:00:00Z' } }, 'wrong-time', 'operation.at'],
    [{ operation: { ...operation, zone: 'London' } }, 'unknown-zone', 'operation.zone'],
    [{ operation: { ...operation, zone: '+01:00' } }, 'unknown-zone', 'operation.zone'],
    [{ operation: { ...operation, side: 'left' } }, 'invalid-value', 'operation.side'],
    [{ operation, closed: ['2026-02-30'] }, 'wrong-value', 'closed[0]'],
    [{ operation, policy: { sutures: '10 days' } }, 'unknown-policy', 'policy.sutures'],
    [{ operation, policy: { 'suture-check': 'soon' } }, 'wrong-span', 'policy.suture-check'],
    [{ operation, medicines: [{ drug: 'x', times: ['8:00'], days: 3 }] }, 'invalid-format', 'medicines[0].times[0]'],
    [{ operation, medicines: [{ drug: 'x', days: 3 }] }, 'wrong-medicine', 'medicines[0]'],
    [{ operation, findings: { tearTest: { LEFT: 6 } } }, 'bare-number', 'findings.tearTest.LEFT'],
    [{ operation, findings: { tearTest: { LEFT: { value: 6, unit: 'mg' } } } }, 'wrong-unit', 'findings.tearTest.LEFT'],
  ])('%j', (input, code, path) => {
    expect(refusal(input)).toMatchObject({ code, path })
    expect(refusal(input).message.length).toBeGreaterThan(20)
  })

  it('a field it does not know, by its name', () => {
    expect(() => schedule({ operation, closd: [] })).toThrow('closd: "closd" is not a field that is read here')
  })
})
