import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { troubleRules } from '#content/outcomes/trouble-rules.ts'
import { operatedEarsOf } from '#core/evidence/own/operated-ear.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { check } from '#core/journal/kinds/check.ts'
import { complication } from '#core/journal/kinds/complication.ts'
import { death } from '#core/journal/kinds/death.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { classOf } from './standing.ts'
import type { Trouble } from './trouble.ts'
import { troublesOf } from './troubles-of.ts'

/** Wednesday 4 March 2026, 09:00 in London. */
const cut = '2026-03-04T09:00:00.000Z'
const closed: BodyOf<'check'> = {
  ...check.example,
  wound: 'closed',
  woundNeeded: 'not-assessed',
  blink: 'normal',
  lipOrEarDroop: 'no',
}

function operated(make: MakeEntry, before: BodyOf<'baseline'> = baseline.example): Entry[] {
  const plannedFor = { at: cut, zone: 'Europe/London', precision: 'minute', by: 'person' } as const
  const stamp = { checkpoint: 'incision', answer: 'done', detail: {}, text: null } as const
  return [
    make({ kind: 'identity' }),
    make({ kind: 'baseline', at: '2026-03-04T07:00:00.000Z', body: before }),
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
    make({ kind: 'theatre-stamp', at: cut, body: stamp }),
  ]
}

function fileAfter(after: (make: MakeEntry) => readonly Entry[], before?: BodyOf<'baseline'>) {
  const make = entryMaker()
  return fileOf([...operated(make, before), ...after(make)])
}

function troubles(after: (make: MakeEntry) => readonly Entry[], before?: BodyOf<'baseline'>): readonly Trouble[] {
  return troublesOf(fileAfter(after, before), ownCounting).troubles
}

const day = (number: number) => new Date(Date.parse(cut) + number * 86_400_000).toISOString()
const moment = (number: number) =>
  ({ at: day(number), zone: 'Europe/London', precision: 'minute', by: 'person' }) as const
const written = (body: Partial<BodyOf<'complication'>>): BodyOf<'complication'> => ({
  ...complication.example,
  firstNoticed: moment(6),
  ...body,
})

describe('the troubles of a case', () => {
  it('are none before anything was seen', () => {
    expect(troubles(() => [])).toEqual([])
  })

  it('follow from a check, with what the wound needed', () => {
    const [gap, ...more] = troubles((make) => [
      make({ kind: 'check', at: day(6), body: { ...closed, wound: 'gap', woundNeeded: 'dressing' } }),
    ])
    expect(more).toEqual([])
    expect(gap).toMatchObject({
      event: 'wound-gap',
      unit: 'ear',
      side: 'LEFT',
      needed: 'wound-care-awake',
      before: 'absent',
      decision: null,
      written: null,
    })
  })

  it('stand once for a check and an entry of their own, with the greater need of both and the earlier day', () => {
    const all = troubles((make) => [
      make({ kind: 'check', at: day(6), body: { ...closed, wound: 'gap', woundNeeded: 'drainage-awake' } }),
      make({ kind: 'complication', at: day(8), body: written({ firstNoticed: moment(8), needed: 'none' }) }),
    ])
    expect(all).toHaveLength(1)
    expect(all[0]).toMatchObject({ needed: 'intervention-awake', firstNoticed: { at: day(6) } })
    expect(all[0]?.from).toHaveLength(2)
  })

  it('rise with the entry that takes the place of an earlier one', () => {
    const all = troubles((make) => {
      const first = make({ kind: 'complication', at: day(6), body: written({ needed: 'none' }) })
      const later = written({ needed: 'intervention-general-anaesthesia' })
      const reason = 'Closed again under general anaesthesia.'
      return [first, make({ kind: 'complication', at: day(9), body: later, supersedes: [first.id], reason })]
    })
    expect(all.map(({ needed }) => needed)).toEqual(['intervention-general-anaesthesia'])
  })

  it('leave a Horner’s syndrome that the baseline had, and is no worse, outside of what is counted', () => {
    const had = { ...baseline.example, LEFT: { ...baseline.example.LEFT, pupil: 'small' as const } }
    const look = (make: MakeEntry) => [make({ kind: 'check', at: day(2), body: { ...closed, horner: 'yes' } })]
    const [before] = troubles(look, had)
    expect(before).toMatchObject({ event: 'horner', before: 'same', beforeFrom: 'baseline' })
    expect(before && classOf(before)).toBe('was-there-before')
    const [fresh] = troubles(look)
    expect(fresh).toMatchObject({ event: 'horner', before: 'absent' })
    expect(fresh && classOf(fresh)).toBeNull()
  })

  it('do not know what was there before where nobody looked, and take it from a person who does', () => {
    const blank = {
      ...baseline.example,
      LEFT: { ...baseline.example.LEFT, pupil: 'not-assessed' as const, thirdEyelidUp: 'not-assessed' as const },
    }
    const write = (before: BodyOf<'complication'>['before']) =>
      troubles(
        (make) => [make({ kind: 'complication', at: day(2), body: written({ event: 'horner', before }) })],
        blank,
      )
    expect(write('as-recorded')[0]).toMatchObject({ before: 'not-known', beforeFrom: null })
    expect(write('absent')[0]).toMatchObject({ before: 'absent', beforeFrom: 'person' })
  })

  it('let the baseline count where a person says otherwise, and say so', () => {
    const [one] = troubles((make) => [
      make({ kind: 'complication', at: day(2), body: written({ event: 'horner', before: 'same' }) }),
    ])
    expect(one).toMatchObject({ before: 'absent', beforeFrom: 'baseline', beforeDisagrees: true })
  })

  it('call a face that was weak and is paralysed now worse than before', () => {
    const weak = { ...baseline.example, LEFT: { ...baseline.example.LEFT, blink: 'weak' as const } }
    const look = (blink: 'weak' | 'absent') =>
      troubles((make) => [make({ kind: 'check', at: day(3), body: { ...closed, blink } })], weak)[0]
    expect(look('absent')).toMatchObject({ event: 'facial-weakness', before: 'milder' })
    expect(look('weak')).toMatchObject({ before: 'same' })
  })

  it('end as before when a later check finds it so, and not from silence', () => {
    const seen = (make: MakeEntry) => make({ kind: 'check', at: day(3), body: { ...closed, horner: 'yes' } })
    const later = (make: MakeEntry, horner: 'yes' | 'no' | 'not-assessed') =>
      make({ kind: 'check', at: day(60), body: { ...closed, horner } })
    const lasting = (horner: 'yes' | 'no' | 'not-assessed') =>
      troubles((make) => [seen(make), later(make, horner)])[0]?.lasting
    expect(lasting('no')).toBe('full')
    expect(lasting('yes')).toBe('not-known')
    expect(lasting('not-assessed')).toBe('not-known')
  })

  it('take beating eyes or a sway for poor balance once the anaesthetic is over, gone when all three signs are', () => {
    const still = { headTilt: 'no', nystagmus: 'no', unsteady: 'no' } as const
    const seen = (at: string, found: Partial<BodyOf<'check'>>) => (make: MakeEntry) =>
      make({ kind: 'check', at, body: { ...closed, ...still, ...found } })
    const all = (...looks: readonly ReturnType<typeof seen>[]) => troubles((make) => looks.map((look) => look(make)))
    const sways = seen(day(2), { unsteady: 'yes' })
    expect(all(sways)[0]).toMatchObject({ event: 'vestibular', before: 'absent', lasting: 'not-known' })
    expect(all(sways, seen(day(60), {}))[0]?.lasting).toBe('full')
    expect(all(sways, seen(day(60), { nystagmus: 'not-assessed' }))[0]?.lasting).toBe('not-known')
    expect(all(sways, seen(day(60), { headTilt: 'yes' }))[0]?.lasting).toBe('not-known')
    expect(all(seen(day(0.5), { unsteady: 'yes', nystagmus: 'yes' }))).toEqual([])
  })

  it('do not take a possible block effect for a palsy', () => {
    const asleep = { ...closed, blink: 'absent' as const, possibleBlockEffect: true }
    expect(troubles((make) => [make({ kind: 'check', at: day(2), body: asleep })])).toEqual([])
    expect(troubles((make) => [make({ kind: 'check', at: day(0.5), body: { ...closed, blink: 'absent' } })])).toEqual(
      [],
    )
  })

  it('have a death because of the ear, none not because of it, and an unknown need where nobody knows', () => {
    const died = (relatedToEar: BodyOf<'death'>['relatedToEar']) =>
      troubles((make) => [make({ kind: 'death', at: day(20), body: { ...death.example, cause: 'x', relatedToEar } })])
    expect(died('yes')).toMatchObject([{ event: 'death', unit: 'animal', side: null, needed: 'death' }])
    expect(died('unknown')).toMatchObject([{ event: 'death', needed: 'not-known' }])
    expect(died('no')).toEqual([])
  })

  it('set one aside that names the other ear than its operation', () => {
    const right = { kind: 'ear', animal: 'animal-1', side: 'RIGHT' } as const
    const file = fileAfter((make) => [make({ kind: 'complication', subject: right, at: day(6), body: written({}) })])
    const { troubles: placed, unplaced } = troublesOf(file, ownCounting)
    expect(placed).toEqual([])
    expect(unplaced).toHaveLength(1)
  })
})

it('A trouble that was written down is known to our own figures as well', () => {
  const [ear] = operatedEarsOf(
    fileAfter((make) => [
      make({ kind: 'complication', at: day(6), body: written({}) }),
      make({ kind: 'complication', at: day(2), body: written({ event: 'horner', firstNoticed: moment(2) }) }),
    ]),
    { ...owedRules, counting: ownCounting },
  )
  expect(ear?.known).toMatchObject({ wound_infection_or_dehiscence: true, horner_any: true, deep_recurrence: null })
  expect(ear?.followedUntil).toBe('2026-03-10')
  expect(ear?.troubles.map(({ event, on }) => [event, on])).toEqual([
    ['horner', '2026-03-06'],
    ['wound-gap', '2026-03-10'],
  ])
})

it('What is proposed is never what it is held for', () => {
  const [gap] = troubles((make) => [
    make({ kind: 'complication', at: day(6), body: written({ judged: 'not-decided' }) }),
  ])
  expect(troubleRules.proposed['wound-gap'].value).toBe('complication')
  expect(gap && classOf(gap)).toBeNull()
})
