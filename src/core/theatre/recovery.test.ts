import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { check } from '#core/journal/kinds/check.ts'
import { drugGiven } from '#core/journal/kinds/drug-given.ts'
import { observation } from '#core/journal/kinds/observation.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { type Recovery, recoveryOf } from './recovery.ts'

const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const full = (time: string) => `2026-02-10T${time}:00.000Z`
const make = entryMaker({ subject })

const stamp = (time: string, checkpoint: string) =>
  make({ kind: 'theatre-stamp', at: full(time), body: { checkpoint, answer: 'done', detail: {}, text: null } })
const first = (time: string, body: Partial<BodyOf<'observation'>>) =>
  make({
    kind: 'observation',
    at: full(time),
    body: { ...observation.example, where: 'recovery', values: [], ...body },
  })
const block = (time: string, drug: string) =>
  make({ kind: 'drug-given', at: full(time), body: { ...drugGiven.example, drug } })
// The booked LEFT ear.
const base = [
  make({ kind: 'booking', at: full('07:00') }),
  stamp('09:00', 'anaesthesia-start'),
  stamp('09:30', 'incision'),
]

function recovery(now: string, ...more: readonly ReturnType<typeof stamp>[]): Recovery {
  const theCase = fold([...base, ...more])
  const [operation] = operationsOf({ theCase })
  if (!operation) throw new Error('One is booked.')
  const file = { theCase, clinic: { zone: 'Europe/London' } } as Parameters<typeof recoveryOf>[0]
  return recoveryOf(file, operation, full(now), owedRules.blockLasts)
}

const events = ({ events: all }: Recovery) =>
  all.map(({ what, side, seen, minutes }) => [what, side, seen?.at, minutes])

describe('recovery', () => {
  it('waits since tube out for the blink of the operated eye, for lying on the breastbone and for warmth', () => {
    expect(events(recovery('11:00'))).toEqual([
      ['blink', 'LEFT', undefined, null],
      ['sternal', null, undefined, null],
      ['normal-temperature', null, undefined, null],
    ])
    const waking = recovery('11:40', stamp('11:20', 'tube-out'), first('11:32', { first: 'sternal' }))
    expect(events(waking)).toEqual([
      ['blink', 'LEFT', undefined, 20],
      ['sternal', null, full('11:32'), 12],
      ['normal-temperature', null, undefined, 20],
    ])
  })

  it('has waited no minute yet where the clock of the reader is behind that of the tap', () => {
    expect(recovery('11:19', stamp('11:20', 'tube-out')).events[0]?.minutes).toBe(0)
  })

  it('takes the first blink of this eye: not of the other, and marks one of which nobody said whose it was', () => {
    const out = stamp('11:20', 'tube-out')
    expect(events(recovery('12:00', out, first('11:30', { first: 'blink', side: 'RIGHT' })))[0]?.[2]).toBeUndefined()
    const known = recovery('12:00', out, first('11:38', { first: 'blink', side: 'LEFT' })).events[0]
    expect([known?.minutes, known?.how, known?.sided]).toEqual([18, 'tap', true])
    expect(recovery('12:00', out, first('11:38', { first: 'blink' })).events[0]?.sided).toBe(false)
  })

  it('takes a look that found the eye blinking, and none that did not', () => {
    const look = (time: string, blink: 'weak' | 'absent') =>
      make({
        kind: 'check',
        at: full(time),
        subject: { kind: 'ear', animal: 'animal-1', side: 'LEFT' },
        body: { ...check.example, blink },
      })
    const seen = recovery('14:00', stamp('11:20', 'tube-out'), look('12:00', 'absent'), look('13:20', 'weak')).events[0]
    expect([seen?.minutes, seen?.how]).toEqual([120, 'look'])
  })

  it('says until when a block may hold the face, as long as the content knows it', () => {
    // Eight hours of bupivacaine, two of lidocaine: the house’s, said so in the content.
    const both = recovery('11:00', block('09:20', 'bupivacaine'), block('11:00', 'lidocaine'))
    expect(both.effects).toEqual([{ side: 'LEFT', until: full('17:20') }])
    const unknown = recovery('11:00', block('09:20', 'bupivacaine'), block('09:20', 'ropivacaine'))
    expect(unknown.effects).toEqual([{ side: 'LEFT', until: null }])
    expect(recovery('11:00').blocks).toEqual([])
  })

  it('waits for both eyes where both ears were done under one anaesthetic, each with its own block', () => {
    const second = { ...subject, operation: 'operation-2' }
    const other = entryMaker({ subject: second }, 2)
    const booked = other({
      kind: 'booking',
      at: full('07:00'),
      body: { ...booking.example, side: 'RIGHT', plannedFor: { ...booking.example.plannedFor, at: full('11:00') } },
    })
    const cut = { checkpoint: 'incision', answer: 'done', detail: {}, text: null } as const
    const right = other({ kind: 'theatre-stamp', at: full('11:00'), body: cut })
    const out = other({ kind: 'theatre-stamp', at: full('12:30'), body: { ...cut, checkpoint: 'tube-out' } })
    const later = other({ kind: 'drug-given', at: full('12:00'), body: { ...drugGiven.example, drug: 'bupivacaine' } })
    const waking = recovery(
      '13:00',
      booked,
      right,
      out,
      block('09:20', 'bupivacaine'),
      later,
      first('12:50', { first: 'blink' }),
    )
    expect(events(waking)).toEqual([
      // Written for the LEFT ear without saying whose eye: it is that ear's, and says so.
      ['blink', 'LEFT', full('12:50'), 20],
      ['blink', 'RIGHT', undefined, 30],
      ['sternal', null, undefined, 30],
      ['normal-temperature', null, undefined, 30],
    ])
    expect(waking.effects).toEqual([
      { side: 'LEFT', until: full('17:20') },
      { side: 'RIGHT', until: full('20:00') },
    ])
  })
})
