import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import type { Side } from '#core/animal/species.ts'
import { troublesOf } from '#core/complications/troubles-of.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { check } from '#core/journal/kinds/check.ts'
import { complication } from '#core/journal/kinds/complication.ts'
import { death } from '#core/journal/kinds/death.ts'
import { lateEvent } from '#core/journal/kinds/late-event.ts'
import { operationSummary } from '#core/journal/kinds/operation-summary.ts'
import { twelveMonths } from '#core/journal/kinds/twelve-months.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { standingIn, troubleGroups } from '#core/results/trouble-groups.ts'
import type { Moment } from '#core/time/moment.ts'
import { type OperatedEar, operatedEarsOf } from './operated-ear.ts'
import { earlyYearLook } from './year-look.ts'

/** Wednesday 4 March 2026, 09:00 in London. */
const cut = Date.parse('2026-03-04T09:00:00.000Z')
const day = (number: number) => new Date(cut + number * 86_400_000).toISOString()
const moment = (number: number, precision: Moment['precision'] = 'day'): Moment => ({
  at: day(number),
  zone: 'Europe/London',
  precision,
  by: 'person',
})
const ear = (side: Side) => ({ kind: 'ear', animal: 'animal-1', side }) as const

const counted = { ...owedRules, counting: ownCounting }

type Make = (make: MakeEntry) => readonly Entry[]

function operated(make: MakeEntry, number = 1, on = 0): Entry[] {
  const subject = { kind: 'operation', animal: 'animal-1', operation: `operation-${number}` } as const
  const stamp = { checkpoint: 'incision', answer: 'done', detail: {}, text: null } as const
  const plan = { side: 'LEFT', procedure: 'teca-lbo', agreement: null, anaesthetist: null } as const
  const plannedFor = moment(on, 'minute')
  return [
    make({ kind: 'booking', subject, at: day(on - 10), body: { ...plan, plannedFor, surgeon: 'person-surgeon' } }),
    make({ kind: 'theatre-stamp', subject, at: day(on), body: stamp }),
  ]
}

function fileAfter(after: Make) {
  const make = entryMaker()
  return fileOf([make({ kind: 'identity', at: day(-20) }), ...operated(make), ...after(make)])
}

function earAfter(...after: readonly Make[]): OperatedEar {
  const [first] = operatedEarsOf(
    fileAfter((make) => after.flatMap((one) => one(make))),
    counted,
  )
  if (!first) throw new Error('No ear was operated.')
  return first
}

const known = (...after: readonly Make[]) => earAfter(...after).known

const look =
  (on: number, body: Partial<BodyOf<'check'>>): Make =>
  (make) => [
    make({
      kind: 'check',
      at: day(on),
      subject: ear('LEFT'),
      body: { ...check.example, wound: 'closed', woundNeeded: 'nothing', ...body },
    }),
  ]
const status =
  (on: number, said: BodyOf<'twelve-months'>['status'] = 'solved'): Make =>
  (make) => [
    make({ kind: 'twelve-months', at: day(on), subject: ear('LEFT'), body: { ...twelveMonths.example, status: said } }),
  ]
const late =
  (on: number, body: Partial<BodyOf<'late-event'>>, side: Side = 'LEFT'): Make =>
  (make) => [
    make({
      kind: 'late-event',
      at: day(on),
      subject: ear(side),
      body: { ...lateEvent.example, firstSeen: moment(on), ...body },
    }),
  ]
const trouble =
  (on: number, body: Partial<BodyOf<'complication'>>): Make =>
  (make) => [
    make({
      kind: 'complication',
      at: day(on),
      subject: ear('LEFT'),
      body: { ...complication.example, firstNoticed: moment(on), ...body },
    }),
  ]
const again =
  (on: number, mainReason: BodyOf<'operation-summary'>['mainReason'] = null): Make =>
  (make) => [
    ...operated(make, 2, on),
    make({
      kind: 'operation-summary',
      at: day(on + 0.2),
      subject: { kind: 'operation', animal: 'animal-1', operation: 'operation-2' },
      body: {
        ...operationSummary.example,
        side: 'LEFT',
        mainReason,
        incisionAt: moment(on, 'minute'),
        closedAt: moment(on + 0.1, 'minute'),
      },
    }),
  ]

describe('an ear seen after a year', () => {
  it('is free of a tract, and not operated again, only where the wound was looked at and nothing was found', () => {
    const free = { deep_recurrence: false, revision_surgery: false }
    const open = { deep_recurrence: null, revision_surgery: null }
    expect(known(look(400, {}))).toMatchObject(free)
    expect(known(look(400, { wound: 'infected', woundNeeded: 'operation' }))).toMatchObject(open)
    expect(known(look(400, { wound: 'infected', woundNeeded: 'drug' }))).toMatchObject(open)
    expect(known(look(400, { wound: 'seroma', woundNeeded: 'nothing' }))).toMatchObject(open)
    expect(known(look(400, { woundNeeded: 'operation' }))).toMatchObject(open)
    expect(known(look(400, { wound: 'not-assessed', woundNeeded: 'not-assessed' }))).toMatchObject(open)
  })

  it('stays unknown after a look that tells of infection, also when it is quiet later, until somebody says what it was', () => {
    const infected = look(400, { wound: 'infected', woundNeeded: 'drug' })
    expect(known(infected, look(430, {})).deep_recurrence).toBeNull()
    expect(known(look(150, { wound: 'infected' }), status(365)).deep_recurrence).toBeNull()
    const named = (event: BodyOf<'complication'>['event']) => trouble(401, { event, needed: 'medicine' })
    expect(known(infected, look(430, {}), named('wound-infection')).deep_recurrence).toBe(false)
    expect(known(infected, look(430, {}), named('deep-infection')).deep_recurrence).toBe(true)
    // What was written of the first wound says nothing of a look a year later.
    const first = trouble(8, { event: 'wound-infection', needed: 'medicine' })
    expect(known(first, infected, look(430, {})).deep_recurrence).toBeNull()
  })

  it('is not free of anything because it "failed"', () => {
    expect(known(status(365, 'failed'))).toMatchObject({
      deep_recurrence: null,
      revision_surgery: null,
      resolution_or_improved: false,
    })
  })

  it('is not settled by a result that is written sooner', () => {
    const nothing = { deep_recurrence: null, revision_surgery: null, resolution_or_improved: null }
    expect(known(status(20))).toMatchObject(nothing)
    expect(known(status(302))).toMatchObject(nothing)
    expect(known(status(303))).toMatchObject({ deep_recurrence: false, resolution_or_improved: true })
    expect(known(status(20, 'failed'), status(365))).toMatchObject({
      deep_recurrence: false,
      resolution_or_improved: true,
    })
  })

  it('is told to whoever writes it sooner', () => {
    const file = fileAfter(() => [])
    const early = (on: string) => earlyYearLook(file, 'LEFT', on, ownCounting)
    expect(early('2026-03-16')).toEqual({ operated: '2026-03-04', after: 12, from: '2027-01-01' })
    expect(early('2027-01-01')).toBeNull()
    expect(early('2026-03-03')).toBeNull()
    expect(earlyYearLook(file, 'RIGHT', '2026-03-16', ownCounting)).toBeNull()
  })

  it('is known or not by one rule, in our counts and in our trouble', () => {
    const stand = (...after: readonly Make[]) => {
      const one = earAfter(...after)
      const [group] = troubleGroups({ species: one.species, procedure: one.procedure, unit: 'ear' }, [one])
      if (!group) throw new Error('No ear was operated.')
      const { standing } = standingIn('deep-infection', group, { rules: troubleRules, today: '2028-01-01' })
      return [one.known.deep_recurrence, standing]
    }
    expect(stand(status(364))).toEqual([false, 'free'])
    expect(stand(look(310, {}))).toEqual([false, 'free'])
    expect(stand(status(20))).toEqual([null, 'lost'])
    expect(stand(look(400, { wound: 'infected' }))).toEqual([null, 'lost'])
    expect(stand(late(150, {}))).toEqual([true, 'events'])
  })
})

describe('an ear that was operated again', () => {
  const revised = (...after: readonly Make[]) => known(...after).revision_surgery

  it('is one of which an operation is on record, or was told; a need is none', () => {
    expect(revised(late(150, { needed: 'operation' }))).toBeNull()
    expect(revised(late(150, { needed: 'operation' }), status(365))).toBeNull()
    expect(revised(late(150, { needed: 'operation' }), again(160))).toBe(true)
    expect(revised(late(150, { needed: 'operation-done' }))).toBe(true)
    expect(revised(late(150, { what: 'other', needed: 'operation-done' }), status(365))).toBeNull()
    expect(revised(again(160, 'abscess-or-tract'))).toBe(true)
    expect(revised(trouble(150, { event: 'deep-infection', needed: 'intervention-general-anaesthesia' }))).toBe(true)
    expect(
      revised(trouble(150, { event: 'deep-infection', needed: 'medicine' }), late(150, { needed: 'operation' })),
    ).toBeNull()
  })

  it('is none for a tumour that grows again', () => {
    const tumour = late(200, { what: 'tumour-again', needed: 'operation' })
    expect(revised(tumour)).toBeNull()
    expect(revised(tumour, status(365))).toBe(false)
    expect(revised(tumour, again(210))).toBeNull()
    expect(revised(again(400, 'tumour'), look(380, {}))).toBe(false)
    expect(revised(late(150, {}), again(160, 'tumour'))).toBeNull()
  })
})

describe('a death around the operation', () => {
  const died = (on: number, body: Partial<BodyOf<'death'>>) =>
    known((make) => [
      make({
        kind: 'death',
        at: day(on),
        subject: { kind: 'animal', animal: 'animal-1' },
        body: { ...death.example, relatedToEar: 'no', relatedToOperation: 'unknown', ...body },
      }),
    ]).perioperative_death

  it('counts by what it was put down to, and not by the ear', () => {
    expect(died(0.1, { relatedToOperation: 'yes', cause: 'Cardiac arrest under anaesthesia' })).toBe(true)
    expect(died(0.1, { relatedToOperation: 'no' })).toBe(false)
    expect(died(0.1, {})).toBeNull()
    expect(died(0.1, { relatedToEar: 'possibly' })).toBeNull()
    expect(died(0.1, { relatedToEar: 'yes' })).toBe(true)
    expect(died(60, { relatedToOperation: 'yes' })).toBe(false)
  })

  it('is not known where the entry is of before that was asked', () => {
    const make = entryMaker()
    const { relatedToOperation: _, ...older } = { ...death.example, relatedToEar: 'no' as const }
    const entry = make({ kind: 'death', at: day(0.1), subject: { kind: 'animal', animal: 'animal-1' } })
    const v1 = { ...entry, version: 1, body: older } as unknown as Entry
    const [first] = operatedEarsOf(fileOf([make({ kind: 'identity', at: day(-20) }), ...operated(make), v1]), counted)
    expect(first?.known.perioperative_death).toBeNull()
    expect(first?.troubles.map(({ event, needed }) => [event, needed])).toEqual([['death', 'not-known']])
  })
})

describe('a late event that cannot have followed the operation it names', () => {
  it('counts nowhere, and stands for a person to put right', () => {
    const wrong = [
      late(140, {}, 'RIGHT'),
      late(140, { firstSeen: moment(-360) }),
      trouble(140, { event: 'deep-infection', firstNoticed: moment(-360) }),
    ]
    for (const one of wrong) {
      const found = earAfter(one)
      expect([found.tractOn, found.followedUntil, found.known.deep_recurrence]).toEqual([null, null, null])
      expect(troublesOf(fileAfter(one), ownCounting)).toMatchObject({ troubles: [], unplaced: [{}] })
    }
  })

  it('leaves the day of a real one as it is', () => {
    const real = late(150, { what: 'draining-tract', firstSeen: moment(150) })
    const on = day(150).slice(0, 10)
    expect(earAfter(late(140, { firstSeen: moment(-360) }), real).tractOn).toBe(on)
  })

  it('is none where a month alone holds the day of the operation', () => {
    expect(earAfter(late(140, { firstSeen: moment(-3, 'month') })).tractOn).toBe('2026-03-04')
  })
})
