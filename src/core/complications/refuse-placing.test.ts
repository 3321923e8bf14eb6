import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { complication } from '#core/journal/kinds/complication.ts'
import { lateEvent } from '#core/journal/kinds/late-event.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import type { Moment } from '#core/time/moment.ts'
import { refusePlacing } from './refuse-placing.ts'

const seen = (at: string, precision: Moment['precision'] = 'day'): Moment => ({
  at,
  zone: 'Europe/London',
  precision,
  by: 'person',
})
const make = entryMaker()
/** The RIGHT ear, on 8 July 2026. */
const file = fileOf([
  make({
    kind: 'booking',
    at: '2026-07-01T09:00:00.000Z',
    body: {
      side: 'RIGHT',
      procedure: 'teca-lbo',
      agreement: null,
      plannedFor: seen('2026-07-08T08:30:00.000Z', 'minute'),
      surgeon: 'person-surgeon',
      anaesthetist: null,
    },
  }),
  make({
    kind: 'theatre-stamp',
    at: '2026-07-08T08:30:00.000Z',
    body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
  }),
])
const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
const right = { ...left, side: 'RIGHT' } as const
const tract = { ...lateEvent.example, firstSeen: seen('2026-11-20T00:00:00.000Z') }

describe('the form of what came after an operation', () => {
  it('refuses the other ear and a day before it, each at its field with what would be right', () => {
    const before = { ...tract, firstSeen: seen('2025-03-05T00:00:00.000Z') }
    expect(refusePlacing('late-event', before, left, file)).toEqual([
      { path: 'operation', at: 'operation', because: 'other-ear', about: { side: 'RIGHT' } },
      {
        path: 'firstSeen',
        at: 'firstSeen',
        because: 'before-operation',
        about: { given: '5 March 2025', day: '8 July 2026' },
      },
    ])
    const body = { ...complication.example, firstNoticed: seen('2026-07-07T00:00:00.000Z') }
    expect(refusePlacing('complication', body, right, file).map(({ path }) => path)).toEqual(['firstNoticed'])
  })

  it('takes what fits, a month that holds the day, and an operation it does not know', () => {
    expect(refusePlacing('late-event', tract, right, file)).toEqual([])
    const july = { ...tract, firstSeen: seen('2026-06-30T23:00:00.000Z', 'month') }
    expect(refusePlacing('late-event', july, right, file)).toEqual([])
    expect(refusePlacing('late-event', { ...tract, operation: 'operation-9' }, left, file)).toEqual([])
    expect(refusePlacing('note', { text: 'x' } as never, left, file)).toEqual([])
  })
})
