import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { historyItem } from '#core/journal/kinds/history-item.ts'
import { otherEarPlan } from '#core/journal/kinds/other-ear-plan.ts'
import { skinPlan } from '#core/journal/kinds/skin-plan.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'

const make = entryMaker()
const right = { kind: 'ear', animal: 'animal-1', side: 'RIGHT' } as const
const plannedFor = { at: '2026-03-04T09:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' } as const
/** The LEFT ear, operated on 4 March 2026. */
const operated = [
  make({
    kind: 'booking',
    at: '2026-02-20T10:00:00.000Z',
    body: {
      side: 'LEFT',
      procedure: 'teca-lbo',
      agreement: null,
      plannedFor,
      surgeon: 'person-surgeon',
      anaesthetist: null,
    },
  }),
  make({
    kind: 'theatre-stamp',
    at: plannedFor.at,
    body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
  }),
]
const at = '2026-04-08T10:00:00.000Z'

function owed(entries: readonly Entry[]) {
  const found = owedOf(fileOf([...operated, ...entries]), procedures, { rules: owedRules })
  const plans = (what: string) => what.includes('plan') || what.includes('other-ear')
  return {
    open: found.owed.filter(({ what }) => plans(what)),
    closed: found.closed.filter(({ item }) => plans(item.what)),
  }
}

const open = (...entries: readonly Entry[]) =>
  owed(entries)
    .open.map(({ what }) => what)
    .sort()

describe('the plan for the skin and the plan for the other ear', () => {
  it('are owed at the recheck of weeks 4 to 6', () => {
    expect(open()).toEqual(['other-ear-plan', 'skin-plan'])
  })

  it('are settled by their own entries, and look at the other ear, never at the one that was operated', () => {
    const skin = make({ kind: 'skin-plan', at, body: { ...skinPlan.example, reviewOn: null } })
    const body = { ...otherEarPlan.example, reviewOn: null }
    expect(open(skin)).toEqual(['other-ear-plan'])
    expect(open(skin, make({ kind: 'other-ear-plan', at, subject: right, body }))).toEqual([])
    expect(open(skin, make({ kind: 'other-ear-plan', at, body }))).toEqual(['other-ear-plan'])
  })

  it('are settled as before by a dated word on the skin and by a choice for the other ear', () => {
    const told = make({ kind: 'history-item', at, body: { ...historyItem.example, topic: 'skin' } })
    expect(open(told, make({ kind: 'choice', at, subject: right }))).toEqual([])
  })

  it('are not settled by what was planned before the operation', () => {
    const early = make({
      kind: 'skin-plan',
      at: '2026-02-21T10:00:00.000Z',
      body: { ...skinPlan.example, reviewOn: null },
    })
    expect(open(early)).toContain('skin-plan')
  })
})

describe('a plan that names a day', () => {
  const skin = make({ kind: 'skin-plan', at })
  const ear = make({ kind: 'other-ear-plan', at, subject: right })

  it('is owed again on that day, of the ear it is about', () => {
    const { open: items } = owed([skin, ear])
    expect(items.map(({ what, side, dueFrom }) => ({ what, side, day: dueFrom.slice(0, 10) }))).toEqual([
      // Local days of London in summer time begin at 23:00 UTC.
      { what: 'other-ear-review', side: 'RIGHT', day: '2026-05-03' },
      { what: 'skin-plan-review', side: null, day: '2026-05-31' },
    ])
    const [first] = items
    expect(first && sayOwed(first, owedInEnglish)).toMatchObject({ what: 'Look at the plan for the RIGHT ear again' })
  })

  it('is done with when a newer plan stands, or the ear is booked itself', () => {
    const later = '2026-05-04T10:00:00.000Z'
    const body = { ...otherEarPlan.example, reviewOn: null }
    expect(open(skin, ear, make({ kind: 'other-ear-plan', at: later, subject: right, body }))).toEqual([
      'skin-plan-review',
    ])
    const booking = make({
      kind: 'booking',
      at: later,
      subject: { kind: 'operation', animal: 'animal-1', operation: 'operation-2' },
      body: {
        side: 'RIGHT',
        procedure: 'teca-lbo',
        agreement: null,
        plannedFor: { ...plannedFor, at: '2026-06-02T09:00:00.000Z' },
        surgeon: 'person-surgeon',
        anaesthetist: null,
      },
    })
    expect(open(skin, ear, booking)).toEqual(['skin-plan-review'])
    expect(owed([skin, ear, booking]).closed.map(({ item, because }) => `${item.what}: ${because}`)).toContain(
      'other-ear-review: settled',
    )
  })

  it('asks at once when no calendar has that day, and nothing after death', () => {
    const body = { ...skinPlan.example, reviewOn: '2026-02-30' }
    expect(owed([make({ kind: 'skin-plan', at, body })]).open.map(({ what, dueBy }) => [what, dueBy])).toContainEqual([
      'skin-plan-review',
      '2026-04-08T22:59:59.000Z',
    ])
    expect(open(skin, make({ kind: 'death', at: '2026-04-20T10:00:00.000Z' }))).toEqual([])
  })
})
