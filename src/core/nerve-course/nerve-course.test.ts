import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { nerveCourseInEnglish } from '#content/wording/nerve-course.ts'
import type { Entry } from '#core/journal/entry.ts'
import { drugGiven } from '#core/journal/kinds/drug-given.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { owedOf } from '#core/owed/owed.ts'
import {
  absent,
  baselineOf,
  bothCut,
  checkOn,
  lasting,
  makeForTests,
  normal,
  operated,
  readerFor,
  weak,
} from './course-for-tests.ts'
import { nextLookOf } from './nerve-course.ts'
import { sayCourse } from './say-course.ts'

const { courses, courseOf, signOf } = readerFor({ ...owedRules, counting: ownCounting })

function said(entries: readonly Entry[]): string {
  const course = courseOf(entries)
  const { before, signs } = sayCourse(course, fileOf(entries), nerveCourseInEnglish)
  return [before, ...signs].join('\n')
}

describe('a look held against the state before the operation', () => {
  it('grades a blink that is weaker than before as new, with its day and who looked', () => {
    const make = makeForTests()
    const entries = [...operated(make), checkOn(make, '2026-03-09T10:00:00.000Z', weak)]
    expect(signOf(entries, 'blink')).toMatchObject({ now: 'worse', lasting: 'not-yet' })
    expect(said(entries)).toContain(
      'Blink: weak on 9 March 2026 (day 5, our examination); normal before. New since the operation.',
    )
  })

  it('does not grade a blink that is missing while the block may act, and says so with the drug and its end', () => {
    const make = makeForTests()
    const block = make({
      kind: 'drug-given',
      at: '2026-03-04T08:30:00.000Z',
      subject: { kind: 'operation', animal: 'animal-1', operation: 'operation-1' },
      body: { ...drugGiven.example, drug: 'bupivacaine', use: 'local_block' },
    })
    const inBlock = [...operated(make), block, checkOn(make, '2026-03-04T14:00:00.000Z', absent)]
    expect(signOf(inBlock, 'blink')).toMatchObject({ now: 'only-block', lasting: 'not-known', last: null })
    expect(signOf(inBlock, 'blink').points[0]?.look.block).toMatchObject({ because: 'drug', drug: 'bupivacaine' })
    expect(said(inBlock)).toContain(
      'Blink: absent on 4 March 2026, 14:00, possible block effect of bupivacaine until 4 March 2026, 16:30, not graded.',
    )
    // Too soon after the cut to grade, with no drug that still acts by the record.
    const soon = [...operated(make), block, checkOn(make, '2026-03-04T20:00:00.000Z', absent)]
    expect(signOf(soon, 'blink').points[0]?.look.block).toMatchObject({ because: 'hours' })
    const next = [...inBlock, checkOn(make, '2026-03-05T10:00:00.000Z', normal)]
    expect(signOf(next, 'blink')).toMatchObject({ now: 'normal', back: null })
    const still = [...inBlock, checkOn(make, '2026-03-05T10:00:00.000Z', absent)]
    expect(signOf(still, 'blink').now).toBe('worse')
  })

  it('puts down nothing to the operation when nobody looked before it', () => {
    const make = makeForTests()
    const entries = [
      ...operated(make).filter(({ kind }) => kind !== 'baseline'),
      checkOn(make, '2026-03-09T10:00:00.000Z', absent),
    ]
    expect(signOf(entries, 'blink')).toMatchObject({ now: 'not-attributable', lasting: 'not-known' })
    expect(said(entries)).toContain('Not attributable: nobody looked before the operation.')
    const late = [...entries, checkOn(make, '2027-01-20T10:00:00.000Z', absent)]
    expect(signOf(late, 'blink').lasting).toBe('not-known')
  })

  it('does not count a palsy that was there before on the same side, however long it stays', () => {
    const make = makeForTests()
    const before = baselineOf({ LEFT: { blink: 'absent', lipOrEarDroop: 'yes' } })
    const entries = [...operated(make, before), checkOn(make, '2027-01-20T10:00:00.000Z', absent)]
    expect(signOf(entries, 'blink')).toMatchObject({ now: 'as-before', lasting: 'not-lasting' })
    expect(said(entries)).toContain('Already there: Blink: absent; Lip or ear: droops.')
    expect(said(entries)).toContain('as before the operation. Not counted as caused by it.')
    const better = [...operated(make, before), checkOn(make, '2026-04-20T10:00:00.000Z', weak)]
    expect(signOf(better, 'blink').now).toBe('better')
    // A palsy of the other side says nothing of this one.
    const other = baselineOf({ RIGHT: { blink: 'absent' } })
    expect(signOf([...operated(make, other), checkOn(make, '2026-04-20T10:00:00.000Z', weak)], 'blink').now).toBe(
      'worse',
    )
  })

  it('does not take a weak blink seen only after a sedative for the state before', () => {
    const make = makeForTests()
    const sedated = { ...baselineOf({ LEFT: { blink: 'weak' } }), beforeSedation: false }
    const entries = [...operated(make, sedated), checkOn(make, '2026-03-09T10:00:00.000Z', weak)]
    expect(signOf(entries, 'blink')).toMatchObject({ now: 'not-attributable' })
    expect(signOf(entries, 'droop').now).toBe('worse')
    expect(said(entries)).toContain('There, but seen only after a sedative, so not known: blink.')
  })

  it('says between which looks a blink came back, and no day that nobody saw', () => {
    const make = makeForTests()
    const entries = [
      ...operated(make),
      checkOn(make, '2026-03-09T10:00:00.000Z', weak),
      checkOn(make, '2026-03-30T10:00:00.000Z', normal),
    ]
    const { back, lasting: lasts } = signOf(entries, 'blink')
    expect([back?.after.look.on, back?.by.look.on, lasts]).toEqual(['2026-03-09', '2026-03-30', 'not-lasting'])
    expect(said(entries)).toContain(
      'Blink: weak on 9 March 2026 (day 5), normal on 30 March 2026 (day 26, our examination). The change lies in between; on which day nobody saw.',
    )
    const again = [...entries, checkOn(make, '2026-04-30T10:00:00.000Z', weak)]
    expect(signOf(again, 'blink')).toMatchObject({ now: 'worse', back: null })
  })

  it('keeps what an owner tells, and never as an examination', () => {
    const make = makeForTests()
    const entries = [
      ...operated(make),
      checkOn(make, '2026-03-09T10:00:00.000Z', weak),
      checkOn(make, '2026-03-30T10:00:00.000Z', { ...normal, seenBy: 'owner-words' }),
    ]
    expect(signOf(entries, 'blink')).toMatchObject({ now: 'worse', back: null })
    expect(said(entries)).toContain('Blink: normal, told on 30 March 2026 (day 26) by the owner.')
    const vet = [...entries, checkOn(make, '2026-04-02T10:00:00.000Z', { ...normal, seenBy: 'referring-vet' })]
    expect(signOf(vet, 'blink')).toMatchObject({ now: 'normal' })
    const photograph = [
      ...operated(make),
      checkOn(make, '2026-03-20T10:00:00.000Z', { ...normal, seenBy: 'owner-photograph' }),
    ]
    expect(signOf(photograph, 'tears').now).toBe('not-looked-at')
    expect(signOf(photograph, 'droop').now).toBe('normal')
  })

  it('calls nothing normal that nobody looked at', () => {
    const make = makeForTests()
    expect(said(operated(make))).toContain('Nobody has looked at face, eye and balance since the operation.')
    const open = { nostril: 'not-assessed', nystagmus: 'not-assessed', unsteady: 'not-assessed' } as const
    const eye = { tearTest: null, fluorescein: 'not-assessed' } as const
    const blinkOnly = { ...normal, ...open, ...eye, lipOrEarDroop: 'not-assessed' } as const
    const entries = [...operated(make), checkOn(make, '2026-03-09T10:00:00.000Z', blinkOnly)]
    expect(said(entries)).toContain(
      'not the same as normal: lip or ear, nostril, nystagmus, gait, tear test, cornea, gag reflex, hearing.',
    )
    expect(said(entries)).toContain(
      'Normal whenever looked at: blink (last day 5), Horner’s (last day 5), head tilt (last day 5).',
    )
  })
})

describe('what a look asked only since its second version', () => {
  const nextMorning = '2026-03-05T10:00:00.000Z'

  it('is held against the baseline sign by sign', () => {
    const make = makeForTests()
    const before = { ...baselineOf({ LEFT: { nostril: 'dry' } }), unsteady: 'yes', hears: 'yes' } as const
    const seen = { ...normal, nostril: 'dry', nystagmus: 'yes', unsteady: 'yes', gag: 'weak', hears: 'no' } as const
    const entries = [...operated(make, before), checkOn(make, nextMorning, seen)]
    const now = (['nostril', 'tilt', 'nystagmus', 'gait', 'throat', 'hearing'] as const).map(
      (sign) => signOf(entries, sign).now,
    )
    expect(now).toEqual(['as-before', 'normal', 'worse', 'as-before', 'worse', 'worse'])
    expect(said(entries)).toContain('Already there: Nostril: dry; Gait: unsteady.')
    expect(said(entries)).toContain('Nystagmus: eyes beat on 5 March 2026 (day 1, our examination); none before. New')
    expect(said(entries)).toContain('Gait: unsteady on 5 March 2026 (day 1, our examination), as before the operation.')
  })

  it('was not looked at in a check of the first version, and is not normal by it', () => {
    const make = makeForTests()
    const { nostril: _, nystagmus: _n, unsteady: _u, gag: _g, hears: _h, ...older } = normal
    const first = { ...checkOn(make, nextMorning, normal), version: 1, body: older } as unknown as Entry
    const entries = [...operated(make), first]
    expect(signOf(entries, 'tilt').now).toBe('normal')
    for (const sign of ['nostril', 'nystagmus', 'gait', 'throat', 'hearing'] as const) {
      expect(signOf(entries, sign)).toMatchObject({ now: 'not-looked-at', points: [] })
    }
    expect(said(entries)).toContain(
      'Not looked at since the operation, which is not the same as normal: nostril, nystagmus, gait, gag reflex, hearing.',
    )
  })

  it('grades neither gait nor nystagmus while the anaesthetic may still act, and says so', () => {
    const make = makeForTests()
    const dizzy = { ...normal, nystagmus: 'yes', unsteady: 'yes' } as const
    const soon = [...operated(make), checkOn(make, '2026-03-04T15:00:00.000Z', dizzy)]
    expect(signOf(soon, 'gait')).toMatchObject({ now: 'only-anaesthetic', last: null, lasting: 'not-known' })
    expect(said(soon)).toContain(
      'Gait: unsteady on 4 March 2026, 15:00, so soon after the operation that the anaesthetic may still act; not graded. Nobody has looked since in a way that counts.',
    )
    expect(signOf([...soon, checkOn(make, nextMorning, dizzy)], 'gait').now).toBe('worse')
    expect(signOf([...soon, checkOn(make, nextMorning, normal)], 'gait')).toMatchObject({ now: 'normal', back: null })
  })

  it('cannot be seen on a photograph', () => {
    const make = makeForTests()
    const photograph = { ...normal, seenBy: 'owner-photograph', headTilt: 'yes' } as const
    const entries = [...operated(make), checkOn(make, '2026-03-20T10:00:00.000Z', photograph)]
    expect(signOf(entries, 'tilt').now).toBe('worse')
    expect(signOf(entries, 'gait').now).toBe('not-looked-at')
  })
})

describe('a deficit that lasts', () => {
  const dayN = { 179: '2026-08-30T09:00:00.000Z', 180: '2026-08-31T09:00:00.000Z' } as const

  it('does so by a look on day 180 and not on day 179', () => {
    const make = makeForTests()
    expect(signOf([...operated(make), checkOn(make, dayN[179], weak)], 'blink').lasting).toBe('not-yet')
    const late = [...operated(make), checkOn(make, dayN[180], weak)]
    expect(signOf(late, 'blink').lasting).toBe('lasting')
    expect(said(late)).toContain('Lasting by the rule: still there on day 180, and the rule says day 180 or later.')
  })

  it('follows the policy of the house, which is named with its person and day', () => {
    const make = makeForTests()
    const entries = [...operated(make), checkOn(make, dayN[180], weak), lasting(make, '365')]
    const course = courseOf(entries)
    expect(course.signs[0]?.lasting).toBe('not-yet')
    expect(course).toMatchObject({ lastsFrom: '2027-03-04', rule: { policy: { on: '2026-06-01' } } })
    expect(sayCourse(course, fileOf(entries), nerveCourseInEnglish).rule).toMatch(
      /day 365 or later.* House policy of .+, 1 June 2026: We see them at a year\./,
    )
    const unreadable = courseOf([...operated(make), checkOn(make, dayN[180], weak), lasting(make, 'a year')])
    expect([unreadable.rule.policy, unreadable.signs[0]?.lasting]).toEqual([null, 'lasting'])
  })

  it('is no lasting damage of the eye, which is treated until it is well', () => {
    const make = makeForTests()
    const entries = [...operated(make), checkOn(make, dayN[180], { ...normal, fluorescein: 'positive' })]
    expect(signOf(entries, 'cornea')).toMatchObject({ now: 'worse', lasting: null })
  })
})

describe('Horner’s, balance, tears and two ears', () => {
  it('knows the Horner’s of a cat that had it before, and one that is new', () => {
    const make = makeForTests()
    const cat = (before: Parameters<typeof baselineOf>[0]) =>
      operated(make, baselineOf(before)).map((entry) =>
        entry.kind === 'identity' ? { ...entry, body: { ...(entry.body as object), species: 'cat' } as never } : entry,
      )
    const seen = checkOn(make, '2026-03-09T10:00:00.000Z', { ...normal, horner: 'yes' })
    expect(signOf([...cat({}), seen], 'horner').now).toBe('worse')
    expect(signOf([...cat({ LEFT: { pupil: 'small' } }), seen], 'horner').now).toBe('as-before')
    expect(signOf([...cat({ LEFT: { pupil: 'not-assessed' } }), seen], 'horner').now).toBe('not-attributable')
  })

  it('reads tears by the limits of the content, with their value', () => {
    const make = makeForTests()
    const tears = (value: string) => ({ ...normal, tearTest: { value, unit: 'mm/min' as const } })
    const on = (value: string) =>
      signOf([...operated(make), checkOn(make, '2026-03-09T10:00:00.000Z', tears(value))], 'tears')
    expect([on('15').now, on('14').now, on('9').points[0]?.reading]).toEqual([
      'normal',
      'worse',
      { step: 2, value: '9 mm/min' },
    ])
  })

  it('keeps both ears of one anaesthetic apart, and a new head tilt as nobody’s', () => {
    const make = makeForTests()
    const entries = [
      ...bothCut(make),
      checkOn(make, '2026-03-09T10:00:00.000Z', { ...weak, headTilt: 'yes' }, 'RIGHT'),
      checkOn(make, '2026-03-09T10:05:00.000Z', normal, 'LEFT'),
    ]
    const [left, right] = courses(entries)
    expect([left?.operation.side, left?.signs[0]?.now, right?.signs[0]?.now]).toEqual(['LEFT', 'normal', 'worse'])
    const tilt = right?.signs.find(({ sign }) => sign === 'tilt')
    expect(tilt).toMatchObject({ now: 'not-attributable', last: { because: 'both-ears' } })
  })

  it('does not take a look from before an earlier operation of the same ear for the state before the next', () => {
    const make = makeForTests()
    const again = operated(make).filter(({ kind }) => kind === 'booking' || kind === 'theatre-stamp')
    const entries = [
      ...operated(make),
      ...again.map((entry) => ({
        ...entry,
        subject: { kind: 'operation' as const, animal: 'animal-1', operation: 'operation-2' },
        happenedAt: {
          ...entry.happenedAt,
          at: entry.kind === 'booking' ? '2026-06-01T09:00:00.000Z' : '2026-07-01T09:00:00.000Z',
        },
      })),
      checkOn(make, '2026-07-09T10:00:00.000Z', weak),
    ]
    const [first, second] = courses(entries)
    expect(first?.ended).toEqual({ on: '2026-07-01', because: 'operated-again' })
    expect(first?.looks).toEqual([])
    expect(second?.signs[0]).toMatchObject({ now: 'not-attributable', last: { because: 'operation-between' } })
  })

  it('takes the next look from what is owed, and none after a death', () => {
    const make = makeForTests()
    const entries = [...operated(make), checkOn(make, '2026-03-09T10:00:00.000Z', absent)]
    const owed = (some: readonly Entry[]) => owedOf(fileOf(some), procedures, { rules: owedRules }).owed
    const next = nextLookOf(courseOf(entries), owed(entries))
    const all = owed(entries).filter(({ side, what }) => side === 'LEFT' && /look|blink/.test(what))
    expect(next?.dueBy).toBe(all.map(({ dueBy }) => dueBy).sort()[0])
    const dead = [...entries, make({ kind: 'death', at: '2026-03-20T09:00:00.000Z' })]
    expect(nextLookOf(courseOf(dead), owed(dead))).toBeNull()
    expect(courseOf(dead).ended).toMatchObject({ because: 'death' })
  })
})
