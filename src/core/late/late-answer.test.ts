import { describe, expect, it } from 'vitest'
import { lateSign } from '#core/journal/kinds/late-sign.ts'
import { lateEventAt, lateSignSaid, nothingSaidOfEars, standingAnswer, whatOfSigns } from './late-answer.ts'

const ear = {
  stream: 'case:fern',
  animal: 'animal-fern',
  operation: 'operation-1',
  side: 'LEFT',
  on: '2025-09-12',
  words: 'Likely. Because of: the same chip.',
} as const
const telling = {
  at: '2026-11-30T09:00:00.000Z',
  zone: 'Europe/London',
  seenBy: 'owner',
  text: 'A hole that weeps.',
} as const

describe('the late event at the ear that was chosen', () => {
  it('was first seen so long before the telling as was said, and nobody has decided what it needs', () => {
    const event = lateEventAt(ear, 'draining-tract', { ...telling, daysOfSigns: 21 })
    expect(event.firstSeen).toMatchObject({ at: '2026-11-09T00:00:00.000Z', precision: 'day' })
    expect(event).toMatchObject({ operation: 'operation-1', needed: 'not-decided', seenBy: 'owner' })
  })

  it('was first seen on the day it was told where nobody said, or where the signs are older than the operation', () => {
    const seen = (daysOfSigns: number | null) =>
      lateEventAt(ear, 'swelling', { ...telling, daysOfSigns }).firstSeen.at.slice(0, 10)
    expect(seen(null)).toBe('2026-11-30')
    expect(seen(2190)).toBe('2026-11-30')
  })

  it('is called by the plainest sign that was heard', () => {
    expect(whatOfSigns(['draining-tract', 'swelling'])).toBe('draining-tract')
    expect(whatOfSigns(['ear-pain'])).toBe('other')
  })
})

describe('what was said of a late sign', () => {
  it('keeps the ear with everything that was offered, and fits its kind', () => {
    const answer = {
      ...nothingSaidOfEars,
      belongs: 'operated-ear',
      operation: 'operation-1',
      because: ' Same dog. ',
    } as const
    const said = { kind: 'answered', answer, ears: [ear], event: '0190a7c2-0000-7000-8000-000000000003' } as const
    const body = lateSignSaid('0190a7c2-0000-7000-8000-000000000002', ['draining-tract'], said)
    expect(lateSign.body.parse(body)).toMatchObject({
      belongs: 'operated-ear',
      chosen: { file: 'case:fern', operation: 'operation-1', side: 'LEFT' },
      offered: [{ words: 'Likely. Because of: the same chip.' }],
      because: 'Same dog.',
    })
  })

  it('names no ear when it belongs to none, and an ear that is no longer offered was not chosen', () => {
    const chosen = { ...nothingSaidOfEars, belongs: 'operated-ear', operation: 'operation-2' } as const
    expect(standingAnswer(chosen, [ear])).toMatchObject({ belongs: null, operation: null })
    const none = { ...nothingSaidOfEars, belongs: 'none' } as const
    const said = { kind: 'answered', answer: none, ears: [ear], event: null } as const
    expect(lateSignSaid('0190a7c2-0000-7000-8000-000000000002', ['swelling'], said).chosen).toBeNull()
    const body = { ...lateSign.example, belongs: 'none' as const }
    expect(lateSign.body.safeParse(body).success).toBe(false)
  })
})
