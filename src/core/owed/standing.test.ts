import { describe, expect, it } from 'vitest'
import { standingOf } from './standing.ts'

const due = { dueFrom: '2026-03-10T00:00:00.000Z', dueBy: '2026-03-14T23:59:59.000Z' }

describe('how an owed thing stands', () => {
  it.each([
    ['2026-03-09T23:59:59.999Z', { kind: 'later' }],
    ['2026-03-10T00:00:00.000Z', { kind: 'now' }],
    ['2026-03-14T23:59:59.000Z', { kind: 'now' }],
    ['2026-03-14T23:59:59.001Z', { kind: 'late', days: 0 }],
    ['2026-03-17T23:59:59.000Z', { kind: 'late', days: 3 }],
  ])('at %s', (now, standing) => {
    expect(standingOf(due, now)).toEqual(standing)
  })
})
