import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { figuresRules } from '#content/follow-up/figures-rules.ts'
import { countOwn } from '#core/evidence/own/count-own.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { earForTests } from '#core/results/ears-for-tests.ts'
import { owedFigures } from './figures.ts'

const of = { species: 'dog', procedure: 'teca-lbo' } as const
type Figure = BodyOf<'figures-approved'>['figures'][number]

/** Twelve ears asked after a year; of some a tract is on record. */
function counts(tracts: number) {
  const ears = Array.from({ length: 12 }, (_, i) => earForTests(i, { known: { deep_recurrence: i < tracts } }))
  return (['deep_recurrence', 'resolution_or_improved'] as const).map((outcome) =>
    countOwn({ ...of, unit: 'ear', outcome }, ears, '2027-01-31', ownCounting),
  )
}

const figure = (events: number): Figure => ({
  outcome: 'deep_recurrence',
  unit: 'ear',
  events,
  total: 12,
  lost: 0,
  from: null,
  until: null,
})

function owed(tracts: number, entries: readonly Entry[], lateEvents: readonly string[] = []) {
  return owedFigures({
    ...of,
    counts: counts(tracts),
    isTold: ({ outcome }) => outcome === 'deep_recurrence',
    lateEvents,
    dueDays: ['2026-01-10'],
    today: '2027-01-31',
    zone: 'Europe/London',
    house: fold(entries),
    rules: figuresRules,
  })
}

const approvedAt = '2027-01-10T09:00:00.000Z'
const make = entryMaker()
const approved = make({
  kind: 'figures-approved',
  at: approvedAt,
  body: { ...of, asOf: '2027-01-10', figures: [figure(0)], text: null },
})

describe('what owners read is looked at again', () => {
  it('when our counts are others than those that were approved, and not while they are the same', () => {
    expect(owed(0, [approved])).toBeNull()
    expect(owed(1, [approved])).toMatchObject({
      because: 'counted',
      changed: [{ outcome: 'deep_recurrence', before: { events: 0, total: 12 }, after: { events: 1, total: 12 } }],
    })
  })

  it('within a week of a late event, counted from the moment it came in', () => {
    const came = '2027-01-20T15:00:00.000Z'
    expect(owed(1, [approved], ['2026-12-01T10:00:00.000Z', came])).toMatchObject({
      because: 'late-event',
      dueFrom: came,
      dueBy: '2027-01-27T15:00:00.000Z',
    })
  })

  it('until somebody leaves it as it is with a reason; then not before the counts change again', () => {
    const left = make({
      kind: 'figures-left',
      at: '2027-01-21T09:00:00.000Z',
      body: { ...of, asOf: '2027-01-21', figures: [figure(1)], because: 'The tract may be of the other ear.' },
    })
    expect(owed(1, [approved, left])).toBeNull()
    // What owners hear is still what was approved: the change is told from there.
    expect(owed(2, [approved, left])).toMatchObject({ changed: [{ before: { events: 0 }, after: { events: 2 } }] })
  })

  it('where nobody ever approved any, from the first day an ear was counted; and where two approvals stand side by side', () => {
    expect(owed(0, [])).toMatchObject({ dueFrom: '2026-01-10T00:00:00.000Z', changed: [{ before: null }] })
    const beside = make({
      kind: 'figures-approved',
      at: approvedAt,
      body: { ...of, asOf: '2027-01-10', figures: [figure(0)], text: null },
    })
    expect(owed(0, [approved, beside])).toMatchObject({ changed: [{ before: null }] })
  })

  it('not for a count that owners are not told of', () => {
    const found = owed(1, [approved])
    expect(found?.changed.map(({ outcome }) => outcome)).toEqual(['deep_recurrence'])
  })
})
