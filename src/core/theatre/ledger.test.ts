import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { observation } from '#core/journal/kinds/observation.ts'
import { quantity } from '#core/units/quantity.ts'
import { type LedgerRow, ledgerOf } from './ledger.ts'

const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const every = quantity('5', 'min')
type Body = BodyOf<'observation'>
type Value = Body['values'][number]
type More = Partial<Pick<Entry, 'subject' | 'supersedes' | 'reason' | 'happenedAt' | 'device'>>

const heart = (value: string, artefact = false): Value => ({
  what: 'heart-rate',
  value: { value, unit: '/min' },
  method: 'ECG',
  artefact,
})

/** An invented afternoon; every instant in UTC. */
class Afternoon {
  readonly entries: Entry[] = []
  readonly make = entryMaker({ subject })

  stamp(at: string, checkpoint: string, more: More = {}): this {
    const body = { checkpoint, answer: 'done', detail: {}, text: null } as const
    this.entries.push(this.make({ kind: 'theatre-stamp', at: full(at), body, ...more }))
    return this
  }

  see(at: string, body: Partial<Body> = {}, more: More = {}): this {
    const whole = { ...observation.example, values: [heart('92')], ...body }
    this.entries.push(this.make({ kind: 'observation', at: full(at), body: whole, ...more }))
    return this
  }

  ledger(now = '23:00', operation = 'operation-1') {
    const file = { theCase: fold(this.entries), clinic: { zone: 'Europe/London' } }
    return ledgerOf(file as Parameters<typeof ledgerOf>[0], operation, full(now), every)
  }
}

const full = (at: string) => (at.includes('T') ? `${at}:00.000Z` : `2026-01-10T${at}:00.000Z`)
const short = (at: string | null) => at?.slice(11, 16) ?? null
const kindsOf = (rows: readonly LedgerRow[]) => rows.map((row) => `${short(row.at)} ${row.kind}`)

describe('the ledger of an anaesthetic', () => {
  it('ties what was measured, stamped, given and shouted into one column of time', () => {
    const afternoon = new Afternoon()
      .stamp('13:00', 'anaesthesia-start')
      .see('13:05')
      .stamp('13:06', 'incision')
      .stamp('13:07', 'emergency-on-bleeding-1')
      .see('13:10')
      .stamp('13:14', 'tube-out')
    afternoon.entries.push(afternoon.make({ kind: 'drug-given', at: full('13:08') }))
    const { rows, gaps } = afternoon.ledger()
    expect(kindsOf(rows)).toEqual([
      '13:00 day',
      '13:00 stamp',
      '13:05 observation',
      '13:06 stamp',
      '13:07 stamp',
      '13:08 given',
      '13:10 observation',
      '13:14 stamp',
    ])
    expect(rows.flatMap((row) => (row.kind === 'stamp' ? [row.weight] : []))).toEqual([
      'mark',
      'mark',
      'emergency',
      'mark',
    ])
    expect(gaps).toEqual([])
  })

  it('shows every stretch longer than the interval as a gap, from the beginning to tube out', () => {
    const { rows, gaps } = new Afternoon()
      .stamp('13:00', 'anaesthesia-start')
      .see('13:12')
      .see('13:17')
      .see('13:23')
      .stamp('13:20', 'incision')
      .stamp('13:40', 'tube-out')
      .see('14:40')
      .ledger()
    expect(gaps.map(({ at, until, minutes }) => [short(at), short(until), minutes])).toEqual([
      ['13:00', '13:12', 12],
      // Five minutes are the interval; six are more.
      ['13:17', '13:23', 6],
      ['13:23', '13:40', 17],
    ])
    expect(kindsOf(rows).slice(0, 7)).toEqual([
      '13:00 day',
      '13:00 stamp',
      '13:00 gap',
      '13:12 observation',
      '13:17 observation',
      '13:17 gap',
      '13:20 stamp',
    ])
  })

  it('is still gaping while nobody measures, and never claims so of a signed or forgotten record', () => {
    const running = new Afternoon().stamp('13:00', 'anaesthesia-start').see('13:05')
    expect(running.ledger('13:09').gaps).toEqual([])
    expect(running.ledger('13:20').gaps).toEqual([{ at: full('13:05'), until: null, minutes: 15 }])
    expect(running.ledger('2026-01-12T13:00').gaps).toEqual([])
    running.entries.push(running.make({ kind: 'operation-summary', at: full('13:10') }))
    expect(running.ledger('13:20').gaps).toEqual([])
  })

  it('without a stamp of tube out lasts at least to the last stamp: a record without any look is one gap', () => {
    const { gaps } = new Afternoon()
      .stamp('13:00', 'anaesthesia-start')
      .stamp('14:00', 'closed')
      .ledger('2026-01-12T13:00')
    expect(gaps).toEqual([{ at: full('13:00'), until: full('14:00'), minutes: 60 }])
  })

  it('takes neither an artefact nor "nothing could be measured" for a measurement: both are rows inside the gap', () => {
    const { rows, gaps } = new Afternoon()
      .stamp('13:00', 'anaesthesia-start')
      .see('13:04', { values: [heart('240', true)] })
      .see('13:05', { values: [], unmeasured: 'Turned onto the other side.' })
      .see('13:08')
      .ledger('13:10')
    expect(gaps).toEqual([{ at: full('13:00'), until: full('13:08'), minutes: 8 }])
    expect(rows.filter(({ kind }) => kind === 'observation')).toHaveLength(3)
  })

  it('keeps what was marked by amendment: the value stays and is an artefact, at its own moment', () => {
    const afternoon = new Afternoon().see('13:05')
    const [first] = afternoon.entries
    if (!first) throw new Error('There is one.')
    afternoon.see('13:05', { values: [heart('92', true)] }, { supersedes: [first.id], reason: 'An artefact.' })
    const seen = afternoon.ledger().observations
    expect(seen.map(({ at, body }) => [short(at), body.values[0]?.value.value, body.values[0]?.artefact])).toEqual([
      ['13:05', '92', true],
    ])
  })

  it('shows both of two devices in one minute, in corrected order, and an order nobody can be sure of', () => {
    const at = (time: string) => ({ at: full(time), zone: 'Europe/London', precision: 'second', by: 'clock' }) as const
    const device = (id: string, ms: number | null) => ({
      id,
      boot: 'boot-1',
      wallClock: full('13:05'),
      monotonicMs: 0,
      offset: ms === null ? null : { ms, ageMs: 0 },
    })
    // The second tablet is seven minutes fast: what it calls 13:12 was 13:05.
    const { observations } = new Afternoon()
      .see('', { values: [heart('88')] }, { happenedAt: at('13:12'), device: device('tablet-2', -7 * 60_000) })
      .see('', { values: [heart('92')] }, { happenedAt: at('13:05'), device: device('tablet-1', null) })
      .ledger()
    expect(observations.map(({ at: when, orderCertain }) => [short(when), orderCertain])).toEqual([
      ['13:05', true],
      ['13:05', false],
    ])
  })

  it('holds two amendments of one look side by side', () => {
    const afternoon = new Afternoon().see('13:05')
    const supersedes = [afternoon.entries[0]?.id ?? '']
    afternoon
      .see('13:05', { values: [heart('92', true)] }, { supersedes, reason: 'An artefact.' })
      .see('13:05', { values: [heart('29')] }, { supersedes, reason: 'Digits swapped.' })
    const rows = afternoon.ledger().rows.filter((row) => row.kind === 'observation')
    expect(rows.map(({ sideBySide }) => sideBySide)).toEqual([true, true])
  })

  it('goes over midnight: real minutes, and the new day above its rows', () => {
    const { rows, gaps } = new Afternoon()
      .stamp('23:50', 'anaesthesia-start')
      .see('23:55')
      .see('2026-01-11T00:05')
      .stamp('2026-01-11T00:08', 'tube-out')
      .ledger('2026-01-11T01:00')
    expect(gaps).toEqual([{ at: full('23:55'), until: full('2026-01-11T00:05'), minutes: 10 }])
    expect(rows.flatMap((row) => (row.kind === 'day' ? [row.day] : []))).toEqual(['2026-01-10', '2026-01-11'])
  })

  it('counts real minutes over both changes of the clock in London, and says where the clock moved', () => {
    // 29 March 2026: 01:00 GMT becomes 02:00 BST. 25 October 2026: 02:00 BST becomes 01:00 GMT. Both at 01:00 UTC.
    for (const [day, before, after] of [
      ['2026-03-29', 0, 3_600],
      ['2026-10-25', 3_600, 0],
    ] as const) {
      const { rows, gaps } = new Afternoon()
        .stamp(`${day}T00:45`, 'anaesthesia-start')
        .see(`${day}T00:50`)
        .see(`${day}T01:04`)
        .stamp(`${day}T01:08`, 'tube-out')
        .ledger(`${day}T02:00`)
      expect(gaps.map(({ minutes }) => minutes)).toEqual([14])
      const changes = rows.flatMap((row) => (row.kind === 'clock-change' ? [row] : []))
      expect(changes.map(({ at, change }) => [at, change.before, change.after])).toEqual([
        [full(`${day}T01:00`), before, after],
      ])
      expect(kindsOf(rows).slice(-4)).toEqual(['00:50 gap', '01:00 clock-change', '01:04 observation', '01:08 stamp'])
    }
  })

  it('counts what was written about the animal in recovery, and nothing of the ward or of another operation', () => {
    const animal = { subject: { kind: 'animal', animal: 'animal-1' } } as const
    const other = { subject: { ...subject, operation: 'operation-2' } }
    const { observations } = new Afternoon()
      .see('12:00', { where: 'recovery' }, animal)
      .stamp('13:00', 'anaesthesia-start')
      .see('13:05')
      .see('13:50', { where: 'recovery' }, animal)
      .see('14:50', { where: 'ward' }, animal)
      .see('13:06', {}, other)
      .ledger()
    expect(observations.map(({ at }) => short(at))).toEqual(['13:05', '13:50'])
  })

  it('is one column for both ears of one anaesthetic: its beginning is the first, its end the last', () => {
    const right = { subject: { ...subject, operation: 'operation-2' } } as const
    const afternoon = new Afternoon()
    for (const [side, about] of [
      ['LEFT', {}],
      ['RIGHT', right],
    ] as const) {
      const plannedFor = { ...booking.example.plannedFor, at: full('13:00') }
      afternoon.entries.push(
        afternoon.make({
          kind: 'booking',
          at: full('08:00'),
          ...about,
          body: { ...booking.example, side, plannedFor },
        }),
      )
    }
    afternoon
      .stamp('13:00', 'anaesthesia-start')
      .stamp('13:03', 'incision')
      .see('13:05')
      .see('13:10', {}, right)
      .stamp('13:12', 'incision', right)
      .stamp('13:20', 'tube-out', right)
    for (const operation of ['operation-1', 'operation-2']) {
      const { together, observations, gaps, start, tubeOut } = afternoon.ledger('14:00', operation)
      expect(together.map(({ side }) => side)).toEqual(['LEFT', 'RIGHT'])
      expect(observations.map(({ at }) => short(at))).toEqual(['13:05', '13:10'])
      expect([short(start), short(tubeOut)]).toEqual(['13:00', '13:20'])
      expect(gaps.map(({ at, minutes }) => [short(at), minutes])).toEqual([['13:10', 10]])
    }
  })
})
