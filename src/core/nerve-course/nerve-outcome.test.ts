import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { countOwn } from '#core/evidence/own/count-own.ts'
import { operatedEarsOf } from '#core/evidence/own/operated-ear.ts'
import type { OwnOutcome } from '#core/evidence/own/own-outcome.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { baselineOf, bothCut, checkOn, lasting, makeForTests, normal, operated, weak } from './course-for-tests.ts'
import { nerveCoursesOf } from './nerve-course.ts'

const rules = { ...owedRules, counting: ownCounting }
const ears = (entries: readonly Entry[]) => operatedEarsOf(fileOf(entries), rules)
const known = (entries: readonly Entry[], outcome: OwnOutcome) => ears(entries)[0]?.known[outcome]
const face = 'facial_nerve_deficit_permanent'
const day5 = '2026-03-09T10:00:00.000Z'
const day180 = '2026-08-31T09:00:00.000Z'
const day200 = '2026-09-20T09:00:00.000Z'
const tilted: BodyOf<'check'> = { ...normal, headTilt: 'yes' }

describe('an outcome of our results is what the course of the nerve says', () => {
  it('lasting by the same look, and by the same policy of the house', () => {
    const make = makeForTests()
    const late = [...operated(make), checkOn(make, day180, weak)]
    expect(known(late, face)).toBe(true)
    const policy = [...late, lasting(make, '365')]
    expect(known(policy, face)).toBeNull()
    const [course] = nerveCoursesOf(fileOf(policy), rules)
    expect(course?.signs[0]?.lasting).toBe('not-yet')
  })

  it('neither begun nor ended by what an owner tells', () => {
    const make = makeForTests()
    const told = (body: BodyOf<'check'>, at: string) => checkOn(make, at, { ...body, seenBy: 'owner-words' })
    const ended = [...operated(make), checkOn(make, day180, weak), told(normal, day200)]
    expect([known(ended, face), ears(ended)[0]?.blink]).toEqual([
      true,
      { lostOn: '2026-08-31', backOn: null, lastLookOn: '2026-08-31' },
    ])
    const begun = [...operated(make), checkOn(make, day5, normal), told(weak, day200)]
    expect([known(begun, 'facial_nerve_deficit_any'), known(begun, face), ears(begun)[0]?.blink]).toEqual([
      false,
      null,
      null,
    ])
    const year = { status: 'improved', source: 'owner', tries: 1, face: 'weak', wouldChooseAgain: 'yes' } as const
    const asked = make({
      kind: 'twelve-months',
      at: '2027-03-05T09:00:00.000Z',
      body: { ...year, text: null },
      subject: { kind: 'ear', animal: 'animal-1', side: 'LEFT' },
    })
    expect(known([...operated(make), asked], face)).toBeNull()
  })

  it('sign by sign: what one look did not assess does not undo what another found', () => {
    const make = makeForTests()
    const droops = { ...normal, lipOrEarDroop: 'yes' } as const
    const blinkOnly = { ...normal, lipOrEarDroop: 'not-assessed' } as const
    const entries = [...operated(make), checkOn(make, day180, droops), checkOn(make, day200, blinkOnly)]
    expect(known(entries, face)).toBe(true)
    const neverDroop = [...operated(make), checkOn(make, day180, blinkOnly)]
    expect(known(neverDroop, face)).toBeNull()
  })

  it('not known where the only look before was after a sedative and found it, as the course says', () => {
    const make = makeForTests()
    const sedated = { ...baselineOf({ LEFT: { blink: 'weak', lipOrEarDroop: 'yes' } }), beforeSedation: false }
    const entries = [...operated(make, sedated), checkOn(make, day5, weak), checkOn(make, day180, weak)]
    expect([known(entries, 'facial_nerve_deficit_any'), known(entries, face)]).toEqual([null, null])
  })

  it('free of poor balance only where tilt, eyes and gait were all looked at', () => {
    const make = makeForTests()
    const { nostril: _, nystagmus: _n, unsteady: _u, gag: _g, hears: _h, ...older } = normal
    const first = { ...checkOn(make, day180, normal), version: 1, body: older } as unknown as Entry
    expect(known([...operated(make), first], 'vestibular_permanent')).toBeNull()
    expect(known([...operated(make), checkOn(make, day180, normal)], 'vestibular_permanent')).toBe(false)
    const sways = checkOn(make, day180, { ...normal, unsteady: 'yes' })
    expect(known([...operated(make), sways], 'vestibular_permanent')).toBe(true)
  })
})

describe('a new head tilt with both ears operated', () => {
  const outcomes = ['vestibular_any', 'vestibular_permanent'] as const
  const count = (entries: readonly Entry[], outcome: OwnOutcome, unit: 'ear' | 'animal' | 'procedure') => {
    const asked = { species: 'dog', procedure: 'teca-lbo', unit, outcome } as const
    const { events, total, lost, ofNoSide } = countOwn(asked, ears(entries), '2027-06-30', ownCounting)
    return { events, total, lost, ofNoSide }
  }
  const found = (make = makeForTests()) => [
    ...bothCut(make),
    checkOn(make, day5, tilted, 'RIGHT'),
    checkOn(make, '2026-03-09T10:05:00.000Z', normal, 'LEFT'),
    checkOn(make, day180, tilted, 'RIGHT'),
    checkOn(make, day200, normal, 'LEFT'),
  ]

  it('is of neither ear, also not of the one whose own look found none, and of the animal', () => {
    for (const { known: of, ofNoSide } of ears(found())) {
      expect([of.vestibular_any, of.vestibular_permanent, ofNoSide]).toEqual([null, null, [...outcomes]])
    }
    for (const outcome of outcomes) {
      expect(count(found(), outcome, 'ear')).toEqual({ events: 0, total: 0, lost: 2, ofNoSide: 2 })
      expect(count(found(), outcome, 'animal')).toEqual({ events: 1, total: 1, lost: 0, ofNoSide: 0 })
      expect(count(found(), outcome, 'procedure')).toEqual({ events: 1, total: 1, lost: 0, ofNoSide: 0 })
    }
    // The face of each side is known by itself.
    expect(ears(found()).map(({ known: of }) => of.facial_nerve_deficit_any)).toEqual([false, false])
  })

  it('is said of the course in the same words', () => {
    const right = nerveCoursesOf(fileOf(found()), rules)[1]?.signs.find(({ sign }) => sign === 'tilt')
    expect(right).toMatchObject({ now: 'not-attributable', lasting: 'lasts-of-no-side' })
  })

  it('is of the ear where only one was operated', () => {
    const make = makeForTests()
    const entries = [...operated(make), checkOn(make, day5, tilted), checkOn(make, day180, tilted)]
    expect(count(entries, 'vestibular_permanent', 'ear')).toEqual({ events: 1, total: 1, lost: 0, ofNoSide: 0 })
  })

  it('that went away again is known to last in neither', () => {
    const make = makeForTests()
    const gone = [
      ...bothCut(make),
      checkOn(make, day5, tilted, 'RIGHT'),
      checkOn(make, day180, normal, 'RIGHT'),
      checkOn(make, day180, normal, 'LEFT'),
    ]
    expect(count(gone, 'vestibular_any', 'ear')).toMatchObject({ total: 0, ofNoSide: 2 })
    expect(count(gone, 'vestibular_permanent', 'ear')).toEqual({ events: 0, total: 2, lost: 0, ofNoSide: 0 })
    expect(count(gone, 'vestibular_permanent', 'animal')).toEqual({ events: 0, total: 1, lost: 0, ofNoSide: 0 })
  })
})
