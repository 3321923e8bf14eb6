import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { baseline as baselineKind } from '#core/journal/kinds/baseline.ts'
import { check as checkKind } from '#core/journal/kinds/check.ts'
import { death } from '#core/journal/kinds/death.ts'
import { lateEvent as lateEventKind } from '#core/journal/kinds/late-event.ts'
import { operationSummary as operationSummaryKind } from '#core/journal/kinds/operation-summary.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { earForTests } from '#core/results/ears-for-tests.ts'
import { countsByReason } from './by-reason.ts'
import { countOwn, type OwnQuestion } from './count-own.ts'
import { type OperatedEar, operatedEarsOf } from './operated-ear.ts'
import type { OwnOutcome } from './own-outcome.ts'
import { ownRulesOf } from './own-rules.ts'

const counted = { ...owedRules, counting: ownCounting }

/** Wednesday 4 March 2026, 09:00 in London. */
const cut = '2026-03-04T09:00:00.000Z'
const normal: BodyOf<'check'> = { ...checkKind.example, blink: 'normal', lipOrEarDroop: 'no', wound: 'closed' }
const weak: BodyOf<'check'> = { ...normal, blink: 'weak', lipOrEarDroop: 'yes' }

function operated(make: MakeEntry): Entry[] {
  return [
    make({ kind: 'identity' }),
    make({ kind: 'baseline', at: '2026-03-04T07:00:00.000Z' }),
    make({
      kind: 'booking',
      at: '2026-02-20T10:00:00.000Z',
      body: {
        side: 'LEFT',
        procedure: 'teca-lbo',
        agreement: null,
        plannedFor: { at: cut, zone: 'Europe/London', precision: 'minute', by: 'person' },
        surgeon: 'person-surgeon',
        anaesthetist: null,
      },
    }),
    make({
      kind: 'theatre-stamp',
      at: cut,
      body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
    }),
  ]
}

/** What is known of the one operated ear after these entries. */
function known(after: (make: MakeEntry) => readonly Entry[], before = operated) {
  const make = entryMaker()
  const [ear] = operatedEarsOf(fileOf([...before(make), ...after(make)]), counted)
  if (!ear) throw new Error('No ear was operated.')
  return ear.known
}

describe('what was seen of an operated ear up to a day', () => {
  const make = entryMaker()
  const seen = { at: '2026-06-10T09:00:00.000Z', zone: 'Europe/London', precision: 'day', by: 'person' } as const
  const file = fileOf([
    ...operated(make),
    make({ kind: 'check', at: '2026-03-06T09:00:00.000Z', body: weak }),
    make({ kind: 'check', at: '2026-03-25T23:30:00.000Z', body: normal }),
    make({
      kind: 'late-event',
      at: '2026-09-01T09:00:00.000Z',
      body: { ...lateEventKind.example, what: 'draining-tract', operation: 'operation-1', firstSeen: seen },
    }),
    make({
      kind: 'death',
      at: '2026-10-01T09:00:00.000Z',
      body: { how: 'died', cause: 'Heart', relatedToEar: 'no', relatedToOperation: 'no', heardFrom: 'owner' },
    }),
  ])
  const upTo = (day: string) => operatedEarsOf(file, counted, day)[0]

  it('leaves out every look of later, and is nothing before the operation', () => {
    expect(operatedEarsOf(file, counted, '2026-03-03')).toEqual([])
    expect(upTo('2026-03-24')).toMatchObject({ followedUntil: '2026-03-06', blink: { backOn: null }, tractOn: null })
    expect(upTo('2026-03-25')).toMatchObject({ followedUntil: '2026-03-25', blink: { backOn: '2026-03-25' } })
  })

  it('has a tract from the day on which it was first seen, though it was told later; a death from its own day', () => {
    expect(upTo('2026-06-09')).toMatchObject({ tractOn: null, known: { deep_recurrence: null } })
    expect(upTo('2026-06-10')).toMatchObject({ tractOn: '2026-06-10', died: null, known: { deep_recurrence: true } })
    expect(upTo('2026-10-01')?.died).toBe('2026-10-01')
    expect(upTo('2026-10-01')).toEqual(operatedEarsOf(file, counted)[0])
  })
})

describe('what our own record knows of an operated ear', () => {
  it('is nothing before anybody looked', () => {
    expect(Object.values(known(() => []))).toEqual(Array.from({ length: 13 }, () => null))
  })

  it('counts a face that is weaker than before, and calls it lasting from day 180 on', () => {
    const early = known((make) => [make({ kind: 'check', at: '2026-03-06T09:00:00.000Z', body: weak })])
    expect(early).toMatchObject({ facial_nerve_deficit_any: true, facial_nerve_deficit_permanent: null })
    const day179 = '2026-08-30T09:00:00.000Z'
    const day180 = '2026-08-31T09:00:00.000Z'
    const late = (at: string) => known((make) => [make({ kind: 'check', at, body: weak })])
    expect(late(day179).facial_nerve_deficit_permanent).toBeNull()
    expect(late(day180).facial_nerve_deficit_permanent).toBe(true)
  })

  it('knows a face that recovered as "any, not lasting"', () => {
    const recovered = known((make) => [
      make({ kind: 'check', at: '2026-03-06T09:00:00.000Z', body: weak }),
      make({ kind: 'check', at: '2026-03-25T09:00:00.000Z', body: normal }),
    ])
    expect(recovered).toMatchObject({ facial_nerve_deficit_any: true, facial_nerve_deficit_permanent: false })
  })

  it('counts neither what was there before, nor what a block may do, nor what has no baseline', () => {
    const weakBefore = (make: MakeEntry) =>
      operated(make).map((entry) =>
        entry.kind === 'baseline'
          ? make({
              kind: 'baseline',
              at: '2026-03-04T07:00:00.000Z',
              body: {
                ...baselineKind.example,
                LEFT: { ...baselineKind.example.LEFT, blink: 'weak', lipOrEarDroop: 'yes' },
              },
            })
          : entry,
      )
    const seen = (make: MakeEntry) => [make({ kind: 'check', at: '2026-03-06T09:00:00.000Z', body: weak })]
    expect(known(seen, weakBefore).facial_nerve_deficit_any).toBe(false)
    const block = (at: string) => (make: MakeEntry) => [
      make({ kind: 'check', at, body: { ...weak, possibleBlockEffect: true } }),
    ]
    expect(known(block('2026-03-04T18:00:00.000Z')).facial_nerve_deficit_any).toBeNull()
    // Two days later no block acts any more, whoever ticks that it may.
    expect(known(block('2026-03-06T09:00:00.000Z')).facial_nerve_deficit_any).toBe(true)
    const withoutBaseline = (make: MakeEntry) => operated(make).filter(({ kind }) => kind !== 'baseline')
    expect(known(seen, withoutBaseline).facial_nerve_deficit_any).toBeNull()
  })

  it('takes nothing from silence: a tract is known to be absent only after somebody asked', () => {
    const tract = known((make) => [make({ kind: 'late-event', at: '2026-09-01T00:00:00.000Z' })])
    expect(tract.deep_recurrence).toBe(true)
    const solved = { status: 'solved', tries: 3, face: 'normal', wouldChooseAgain: 'yes', text: null } as const
    const asked = (source: 'owner' | 'nobody-reached') =>
      known((make) => [
        make({
          kind: 'twelve-months',
          at: '2027-03-05T09:00:00.000Z',
          body: { ...solved, source },
        }),
      ])
    expect(asked('owner')).toMatchObject({ deep_recurrence: false, resolution_or_improved: true })
    expect(asked('nobody-reached')).toMatchObject({ deep_recurrence: null, resolution_or_improved: null })
    // Nobody looked at the face either, nor heard that the animal is alive.
    expect(asked('nobody-reached')).toMatchObject({ facial_nerve_deficit_permanent: null, perioperative_death: null })
    // An owner who says that the face is normal has graded no nerve.
    expect(asked('owner').facial_nerve_deficit_permanent).toBeNull()
    const looked = known((make) => [
      make({ kind: 'twelve-months', at: '2027-03-05T09:00:00.000Z', body: { ...solved, source: 'our-examination' } }),
    ])
    expect(looked.facial_nerve_deficit_permanent).toBe(false)
  })

  it('knows bleeding and a death around the operation by the signed summary and the date', () => {
    const summary = known((make) => [make({ kind: 'operation-summary', at: '2026-03-04T12:00:00.000Z' })])
    expect(summary.haemorrhage_intraop_any).toBe(false)
    const died = (at: string, relatedToEar: 'yes' | 'no' | 'unknown') =>
      known((make) => [
        make({ kind: 'death', at, body: { ...death.example, relatedToEar, relatedToOperation: 'unknown' } }),
      ]).perioperative_death
    expect(died('2026-03-10T09:00:00.000Z', 'yes')).toBe(true)
    expect(died('2026-03-10T09:00:00.000Z', 'unknown')).toBeNull()
    expect(died('2026-06-10T09:00:00.000Z', 'yes')).toBe(false)
  })
})

describe('what an ear was operated for', () => {
  const reasonOf = (entries: (make: MakeEntry) => readonly Entry[]) => {
    const make = entryMaker()
    return operatedEarsOf(fileOf([...operated(make), ...entries(make)]), counted)[0]?.reason
  }
  const summary = (mainReason: BodyOf<'operation-summary'>['mainReason']) => (make: MakeEntry) => [
    make({
      kind: 'operation-summary',
      at: '2026-03-04T12:00:00.000Z',
      body: { ...operationSummaryKind.example, mainReason, indication: 'A tumour of the canal.' },
    }),
  ]

  it('is what the signed summary says, and never read out of its words', () => {
    expect(reasonOf(summary('polyp'))).toBe('polyp')
    expect(reasonOf(summary(null))).toBe('not-recorded')
    expect(reasonOf(() => [])).toBe('not-recorded')
  })

  it('is not recorded in a summary of the first version', () => {
    const older = (make: MakeEntry) =>
      summary(null)(make).map((entry) => {
        const { mainReason: _, ...body } = entry.body as BodyOf<'operation-summary'>
        return { ...entry, version: 1, body } as unknown as Entry
      })
    expect(reasonOf(older)).toBe('not-recorded')
  })
})

const ear = (
  number: number,
  on: string,
  answer: boolean | null,
  about: Partial<OperatedEar> = {},
  outcome: OwnOutcome = 'deep_recurrence',
): OperatedEar => earForTests(number, { on, ...about, known: { ...about.known, [outcome]: answer } })

const question: OwnQuestion = { species: 'dog', procedure: 'teca-lbo', unit: 'ear', outcome: 'deep_recurrence' }
const count = (ears: readonly OperatedEar[], about: Partial<OwnQuestion> = {}) =>
  countOwn({ ...question, ...about }, ears, '2027-06-30', ownCounting)

describe('our own count', () => {
  it('separates known, lost and not yet due, and counts no event before its time', () => {
    const ears = [
      ear(1, '2026-01-10', true),
      ear(2, '2026-02-10', false),
      ear(3, '2026-03-10', null, { died: '2026-05-01' }),
      ear(4, '2026-04-10', null),
      ear(5, '2027-03-10', true),
      ear(6, '2027-04-10', null),
    ]
    expect(count(ears)).toMatchObject({
      events: 1,
      total: 2,
      lost: 2,
      died: 1,
      notYetDue: 2,
      notYetDueWithEvent: 1,
      period: { from: '2026-01-10', until: '2026-04-10' },
    })
  })

  it('never mixes species, operations or units', () => {
    const both = { animal: 'animal-1', session: 'operation-1' }
    const ears = [
      ear(1, '2026-01-10', true, both),
      ear(2, '2026-01-10', false, { ...both, side: 'RIGHT' }),
      ear(3, '2026-01-10', true, { species: 'cat' }),
      ear(4, '2026-01-10', true, { procedure: 'traction' }),
      ear(5, '2026-01-10', false, { animal: 'animal-5' }),
    ]
    expect(count(ears)).toMatchObject({ events: 1, total: 3 })
    expect(count(ears, { unit: 'animal' })).toMatchObject({ events: 1, total: 2 })
    expect(count(ears, { unit: 'procedure' })).toMatchObject({ events: 1, total: 2 })
  })

  it('counts each reason by itself, and those without one as a group of their own', () => {
    const ears = [
      ear(1, '2026-01-10', true, { reason: 'tumour' }),
      ear(2, '2026-01-10', false, { reason: 'tumour' }),
      ear(3, '2026-01-10', null, { reason: 'polyp' }),
      ear(4, '2026-01-10', false),
      ear(5, '2026-01-10', true, { reason: 'polyp', species: 'cat' }),
    ]
    const found = countsByReason({ species: 'dog', procedure: 'teca-lbo' }, ears, '2027-06-30', ownCounting)
    const deep = found.map(({ reason, ears: of, counts }) => {
      const one = counts.find(({ question: { outcome } }) => outcome === 'deep_recurrence')
      return [reason, of, one?.events, one?.total, one?.lost]
    })
    expect(deep).toEqual([
      ['tumour', 2, 1, 2, 0],
      ['polyp', 1, 0, 0, 1],
      ['not-recorded', 1, 0, 1, 0],
    ])
    expect(found.flatMap(({ counts }) => counts).every(({ question: { unit } }) => unit === 'ear')).toBe(true)
  })

  it('calls an animal well only when every ear is', () => {
    const both = { animal: 'animal-1' }
    const solved = 'resolution_or_improved'
    const ears = [ear(1, '2026-01-10', true, both, solved), ear(2, '2026-01-10', false, both, solved)]
    expect(count(ears, { unit: 'animal', outcome: solved })).toMatchObject({ events: 0, total: 1 })
  })

  it('waits as long as the house says for what is called lasting', () => {
    const make = entryMaker({ stream: 'clinic', subject: { kind: 'clinic' } })
    const policy = (value: string) => fileOf([make({ kind: 'house-policy', body: { ...lasting, value } })]).house
    const lasting = { policy: 'lasting-deficit-days', because: 'Our own.' }
    expect(ownRulesOf(policy('90'), ownCounting).lastingFromDay).toMatchObject({ value: 90, known: 'house' })
    expect(ownRulesOf(policy('soon'), ownCounting).lastingFromDay.value).toBe(180)
  })
})
