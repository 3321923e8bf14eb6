import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { emergencyAccounts, proposedComplications } from './emergency-account.ts'

const make = entryMaker()
const operation = 'operation-1'
const subject = { kind: 'operation', animal: 'animal-1', operation } as const
const stamp = (at: string, checkpoint: string) =>
  make({ kind: 'theatre-stamp', at, subject, body: { checkpoint, answer: 'done', detail: {}, text: null } })
const example = make({ kind: 'drug-given' }).body as BodyOf<'drug-given'>
const given = (at: string, drug: string, about: 'operation' | 'animal' | 'other' = 'operation') =>
  make({
    kind: 'drug-given',
    at,
    subject:
      about === 'animal'
        ? { kind: 'animal', animal: 'animal-1' }
        : about === 'other'
          ? { ...subject, operation: 'operation-2' }
          : subject,
    body: { ...example, drug },
  })

describe('what the entries say of an emergency', () => {
  const on = stamp('2026-03-04T10:20:00.000Z', 'emergency-on-bleeding-1')
  const off = stamp('2026-03-04T10:29:00.000Z', 'emergency-off-bleeding-1')
  const theCase = fold([
    on,
    off,
    given('2026-03-04T10:19:00.000Z', 'cefazolin'),
    given('2026-03-04T10:22:00.000Z', 'tranexamic-acid'),
    given('2026-03-04T10:23:00.000Z', 'balanced-crystalloid', 'animal'),
    given('2026-03-04T10:24:00.000Z', 'ephedrine', 'other'),
    given('2026-03-04T10:35:00.000Z', 'meloxicam'),
    stamp('2026-03-04T10:25:00.000Z', 'k10-haemostasis'),
    make({ kind: 'blood-loss', at: '2026-03-04T10:28:00.000Z', subject }),
    make({ kind: 'blood-loss', at: '2026-03-04T10:40:00.000Z', subject }),
  ])

  it('is from when to when, the drugs given and the steps stamped meanwhile, and the loss written by then', () => {
    const [only, ...others] = emergencyAccounts(theCase, operation)
    expect(others).toEqual([])
    expect([only?.from, only?.until]).toEqual(['2026-03-04T10:20:00.000Z', '2026-03-04T10:29:00.000Z'])
    expect(only?.given.map(({ body }) => body.drug)).toEqual(['tranexamic-acid', 'balanced-crystalloid'])
    expect(only?.steps.map(({ body }) => body.checkpoint)).toEqual(['k10-haemostasis'])
    expect(only?.losses).toHaveLength(1)
  })

  it('holds what was filed to the other ear under the same anaesthetic', () => {
    const booked = (side: 'LEFT' | 'RIGHT', id: string) => {
      const plannedFor = { ...booking.example.plannedFor, at: '2026-03-04T09:00:00.000Z' }
      return make({
        kind: 'booking',
        subject: { ...subject, operation: id },
        body: { ...booking.example, side, plannedFor },
      })
    }
    const ears = [booked('LEFT', operation), booked('RIGHT', 'operation-2')]
    const [only] = emergencyAccounts(
      fold([...ears, on, off, given('2026-03-04T10:24:00.000Z', 'ephedrine', 'other')]),
      operation,
    )
    expect(only?.given.map(({ body }) => body.drug)).toEqual(['ephedrine'])
  })

  it('has no end as long as it lasts', () => {
    const [only] = emergencyAccounts(fold([on, given('2026-03-04T10:35:00.000Z', 'ephedrine')]), operation)
    expect(only?.until).toBeNull()
    expect(only?.given).toHaveLength(1)
  })
})

it('Complications are proposed from what was called, each once, and from nothing else', () => {
  const calls = ['bleeding', 'no-pulse', 'airway', 'low-pressure', 'bleeding', 'undo', 'slow-rhythm'] as const
  expect(proposedComplications(calls.map((call) => ({ call })))).toEqual([
    'bleeding',
    'arrest',
    'airway',
    'low-pressure',
  ])
  expect(proposedComplications([])).toEqual([])
})
