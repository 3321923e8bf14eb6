import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { call } from '#core/journal/kinds/call.ts'
import { discharge } from '#core/journal/kinds/discharge.ts'
import { drugGiven } from '#core/journal/kinds/drug-given.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { plannedLine } from '#core/journal/kinds/planned-line.ts'
import { wardScore } from '#core/journal/kinds/ward-score.ts'
import { emptyRound } from '#core/ward/empty-round.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { wardCodes } from './owed-code-of.ts'
import type { OwedCode, OwedItem } from './owed-item.ts'
import { sayOwed } from './owed-wording.ts'

const make = entryMaker()
const operation = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const animal = { kind: 'animal', animal: 'animal-1' } as const
/** Cut at nine, closed at noon, by the clock of London, on the LEFT side unless said otherwise. */
function operated(day = '2026-02-10', who: Partial<BodyOf<'identity'>> = {}): Entry[] {
  const stamp = (checkpoint: string, at: string) =>
    make({
      kind: 'theatre-stamp',
      at,
      subject: operation,
      body: { checkpoint, answer: 'done', detail: {}, text: null },
    })
  const plannedFor = { at: `${day}T09:00:00.000Z`, zone: 'Europe/London', precision: 'minute', by: 'person' } as const
  return [
    make({ kind: 'identity', body: { ...identity.example, ...who } }),
    make({ kind: 'booking', subject: operation, body: { ...booking.example, side: 'LEFT', plannedFor } }),
    stamp('incision', `${day}T09:00:00.000Z`),
    stamp('closed', `${day}T12:00:00.000Z`),
  ]
}

function round(at: string, body: Partial<BodyOf<'ward-score'>>): Entry {
  return make({ kind: 'ward-score', at, subject: animal, body: { ...emptyRound, ...body } })
}

function observed(at: string, body: Partial<BodyOf<'observation'>>): Entry {
  const none: BodyOf<'observation'> = {
    where: 'ward',
    values: [],
    pain: null,
    first: null,
    side: null,
    unmeasured: null,
    text: null,
  }
  return make({ kind: 'observation', at, subject: animal, body: { ...none, ...body } })
}

function phoned(at: string, body: Partial<BodyOf<'call'>>): Entry {
  return make({ kind: 'call', at, subject: animal, body: { ...call.example, about: 'ward', ...body } })
}

function owed(entries: readonly Entry[]) {
  return owedOf(fileOf(entries), procedures, { rules: owedRules })
}

function one(what: OwedCode, entries: readonly Entry[]): OwedItem | undefined {
  return owed(entries).owed.find((item) => item.what === what)
}

const span = (item: OwedItem | undefined) => item && [item.dueFrom.slice(5, 16), item.dueBy.slice(5, 16)]
const inWard = (entries: readonly Entry[]) =>
  owed(entries)
    .owed.filter(({ what }) => what !== 'face-and-eye-look' && wardCodes.includes(what))
    .map(({ what }) => what)
    .sort()

describe('the ward', () => {
  it('begins when the operation ended, not while the wound is open', () => {
    const [who, booked, cut] = operated()
    expect(inWard([who, booked, cut] as Entry[])).toEqual([])
    expect(inWard(operated())).toEqual([
      'eye-lubricated',
      'first-blink',
      'ward-airway',
      'ward-food',
      'ward-owner-call',
      'ward-pain',
      'ward-temperature',
      'ward-urine',
    ])
  })

  it('ends with the discharge and with death; nothing goes silently', () => {
    const home = make({ kind: 'discharge', at: '2026-02-11T16:00:00.000Z', body: discharge.example })
    const after = owed([...operated(), home])
    expect(after.owed.filter(({ what }) => what.startsWith('ward-'))).toEqual([])
    const ended = after.closed.filter(({ item }) => item.what.startsWith('ward-'))
    expect(ended.map(({ because }) => because)).toEqual(Array(6).fill('not-needed'))
    const dead = owed([...operated(), make({ kind: 'death', at: '2026-02-11T16:00:00.000Z' })])
    expect(dead.owed.filter(({ what }) => what.startsWith('ward-'))).toEqual([])
  })

  it('ends also where nobody wrote the discharge but the first call reached the owner at home', () => {
    const spoke = phoned('2026-02-12T10:00:00.000Z', { about: 'first-call' })
    expect(inWard([...operated(), spoke]).filter((what) => what.startsWith('ward-'))).toEqual([])
  })
})

describe('pain by the clock', () => {
  const low = { pain: { scale: 'glasgow-dog-short', score: 2 } } as const

  it('is scored hourly for the first six hours, then every four to six (Clinician’s Brief, pain scales)', () => {
    expect(span(one('ward-pain', operated()))).toEqual(['02-10T12:45', '02-10T13:00'])
    expect(span(one('ward-pain', [...operated(), round('2026-02-10T17:30:00.000Z', low)]))).toEqual([
      '02-10T18:15',
      '02-10T18:30',
    ])
    const late = one('ward-pain', [...operated(), round('2026-02-10T18:00:00.000Z', low)])
    expect(span(late)).toEqual(['02-10T22:00', '02-11T00:00'])
    expect(late?.facts.flatMap(({ sources }) => sources)).toEqual(['clinicians-brief-pain-scales'])
  })

  it('is not settled by "asleep", and says so', () => {
    const asleep = round('2026-02-10T12:50:00.000Z', { notScoredBecause: 'asleep' })
    const item = one('ward-pain', [...operated(), asleep])
    expect(span(item)).toEqual(['02-10T12:45', '02-10T13:00'])
    expect(item && sayOwed(item, owedInEnglish).why).toContain('“asleep”. Asleep is not without pain.')
  })

  it('runs over midnight and counts real hours through the night in which the clock goes forward', () => {
    // 29 March 2026, London: 01:00 becomes 02:00.
    const night = [...operated('2026-03-28'), round('2026-03-28T23:30:00.000Z', low)]
    expect(span(one('ward-pain', night))).toEqual(['03-29T03:30', '03-29T05:30'])
  })

  it('steps back while a score after an action is owed: one thing is asked once', () => {
    const high = round('2026-02-10T13:00:00.000Z', {
      pain: { scale: 'glasgow-dog-short', score: 8 },
      action: 'Methadone.',
    })
    expect(inWard([...operated(), high])).toContain('pain-again')
    expect(inWard([...operated(), high])).not.toContain('ward-pain')
  })
})

describe('bandage and breathing', () => {
  const look = { airway: 'quiet', bandage: 'fits' } as const
  const awake = [
    observed('2026-02-10T12:30:00.000Z', { first: 'sternal' }),
    observed('2026-02-10T12:40:00.000Z', { first: 'normal-temperature' }),
  ]

  it('are looked at every 5 to 15 minutes until it is warm and on its chest, then every one to two hours', () => {
    const first = round('2026-02-10T12:10:00.000Z', look)
    expect(span(one('ward-airway', [...operated(), first]))).toEqual(['02-10T12:15', '02-10T12:25'])
    const later = [...operated(), ...awake, round('2026-02-10T13:00:00.000Z', look)]
    expect(span(one('ward-airway', later))).toEqual(['02-10T14:00', '02-10T15:00'])
  })

  it.each([
    ['a cat', { species: 'cat' as const }],
    ['a flat face', { flatFace: 'yes' as const }],
  ])('are watched more closely: %s, with the reason', (_, who) => {
    const item = one('ward-airway', [...operated('2026-02-10', who), ...awake, round('2026-02-10T13:00:00.000Z', look)])
    expect(span(item)).toEqual(['02-10T13:30', '02-10T14:00'])
    expect(item?.why.map(({ code }) => code)).toContain('watched-closely')
  })

  it('are not looked at when only one of the two was', () => {
    const half = round('2026-02-10T12:10:00.000Z', { airway: 'quiet' })
    expect(span(one('ward-airway', [...operated(), half]))).toEqual(['02-10T12:05', '02-10T12:15'])
  })
})

describe('the eye of the operated side', () => {
  const block = make({
    kind: 'drug-given',
    at: '2026-02-10T08:30:00.000Z',
    subject: operation,
    body: { ...drugGiven.example, drug: 'bupivacaine', use: 'local_block' },
  })
  const blink = (at: string, said: 'absent' | 'weak' | 'normal', wet: 'yes' | 'not-assessed' = 'not-assessed') =>
    round(at, { LEFT: { blink: said, lubricated: wet } })

  it('is asked for its first blink, and no longer once it was seen', () => {
    expect(span(one('first-blink', operated()))).toEqual(['02-10T12:00', '02-10T14:00'])
    expect(inWard([...operated(), blink('2026-02-10T13:00:00.000Z', 'weak')])).not.toContain('first-blink')
    const first = (side: 'LEFT' | 'RIGHT' | null) => observed('2026-02-10T13:00:00.000Z', { first: 'blink', side })
    expect(inWard([...operated(), first('LEFT')])).not.toContain('first-blink')
    expect(inWard([...operated(), first(null)])).not.toContain('first-blink')
    expect(inWard([...operated(), first('RIGHT')])).toContain('first-blink')
  })

  it('without a blink within the block is not graded, kept wet anyway, and looked at when the block has worn off', () => {
    const entries = [...operated(), block, blink('2026-02-10T13:00:00.000Z', 'absent', 'yes')]
    expect(inWard(entries)).toEqual(expect.arrayContaining(['look-after-the-block', 'eye-lubricated']))
    expect(inWard(entries)).not.toContain('eye-at-risk-look')
    expect(inWard(entries)).not.toContain('first-blink')
    expect(span(one('look-after-the-block', entries))?.[0]).toBe('02-10T16:30')
    const wet = one('eye-lubricated', entries)
    expect(span(wet)).toEqual(['02-10T14:00', '02-10T15:00'])
    expect(wet?.why.map(({ code }) => code)).toContain('possible-block-effect')
  })

  it('without a blink after the block is at risk, and is looked at again in the ward', () => {
    const entries = [
      ...operated(),
      block,
      blink('2026-02-10T13:00:00.000Z', 'absent'),
      blink('2026-02-10T17:00:00.000Z', 'absent'),
    ]
    expect(inWard(entries)).toEqual(expect.arrayContaining(['eye-at-risk-look', 'eye-lubricated', 'first-blink']))
    expect(span(one('first-blink', entries))).toEqual(['02-10T19:00', '02-10T21:00'])
  })

  it('is kept wet by what was used: ointment lasts longer than gel (eye care texts)', () => {
    const ointment = make({
      kind: 'drug-given',
      at: '2026-02-10T12:30:00.000Z',
      subject: animal,
      body: { ...drugGiven.example, drug: 'paraffin-eye-ointment', use: 'eye', line: null },
    })
    const bare = operated()
    expect(span(one('eye-lubricated', bare))).toEqual(['02-10T12:00', '02-10T14:00'])
    expect(span(one('eye-lubricated', [...bare, ointment]))).toEqual(['02-10T16:30', '02-10T18:30'])
  })

  it('is no longer kept wet by the clock once a look finds it normal', () => {
    const entries = [
      ...operated(),
      block,
      blink('2026-02-10T13:00:00.000Z', 'absent'),
      blink('2026-02-10T17:00:00.000Z', 'normal'),
    ]
    expect(inWard(entries)).not.toContain('eye-lubricated')
    expect(owed(entries).closed.map(({ item }) => item.what)).toContain('eye-lubricated')
  })
})

describe('the owner', () => {
  it('is rung within two hours, and once a day from then on: not again the same day', () => {
    expect(span(one('ward-owner-call', operated()))).toEqual(['02-10T12:00', '02-10T14:00'])
    const spoke = phoned('2026-02-10T13:30:00.000Z', { reached: 'yes' })
    expect(span(one('ward-owner-call', [...operated(), spoke]))).toEqual(['02-11T00:00', '02-11T13:30'])
  })

  it('is still owed a call after a try without an answer, which is said', () => {
    const tried = phoned('2026-02-10T13:30:00.000Z', { reached: 'no' })
    const item = one('ward-owner-call', [...operated(), tried])
    expect(item?.why.map(({ code }) => code)).toContain('tried-without-answer')
    expect(span(item)).toEqual(['02-10T12:00', '02-10T14:00'])
  })

  it('is rung at the same time by the clock on the wall after the night in which it changed', () => {
    // London: 13:30 on Saturday is 13:30Z, 13:30 on Sunday 29 March is 12:30Z.
    const spoke = phoned('2026-03-28T13:30:00.000Z', { reached: 'yes' })
    expect(span(one('ward-owner-call', [...operated('2026-03-28'), spoke]))).toEqual(['03-29T00:00', '03-29T12:30'])
  })
})

describe('doses in the ward', () => {
  const how = { ...nullHow(), every: { value: '4', unit: 'h' as const } }
  const line = make({
    kind: 'planned-line',
    subject: operation,
    body: { ...plannedLine.example, line: 'opioid', drug: 'methadone', use: 'analgesia_bolus', how },
  })
  const given = (at: string, drug = 'methadone') =>
    make({
      kind: 'drug-given',
      at,
      subject: operation,
      body: { ...drugGiven.example, drug, use: 'analgesia_bolus', line: drug === 'methadone' ? 'opioid' : null },
    })

  it('are due when the plan names how often, counted from the last one that was given', () => {
    expect(one('ward-dose', [...operated(), line])).toBeUndefined()
    const doses = [given('2026-02-10T08:50:00.000Z'), given('2026-02-10T13:10:00.000Z')]
    const item = one('ward-dose', [...operated(), line, ...doses])
    expect(span(item)).toEqual(['02-10T17:10', '02-10T17:10'])
    expect(item && sayOwed(item, owedInEnglish)).toMatchObject({
      what: 'Next dose: methadone',
      why: expect.stringContaining('every 4 h'),
    })
  })

  it('are not invented where the plan says no interval', () => {
    const without = make({ kind: 'planned-line', subject: operation, body: { ...plannedLine.example, line: 'opioid' } })
    expect(one('ward-dose', [...operated(), without, given('2026-02-10T13:10:00.000Z')])).toBeUndefined()
  })
})

describe('house policy', () => {
  it('sets every interval of the ward under its own name, with whose it is', () => {
    const policy = make({
      kind: 'house-policy',
      stream: 'clinic',
      subject: { kind: 'clinic' },
      body: { policy: 'owed.ward.pain-early', value: '20..30 minutes', because: 'We like to know sooner.' },
    })
    const item = one('ward-pain', [...operated(), policy])
    expect(span(item)).toEqual(['02-10T12:20', '02-10T12:30'])
    expect(item?.why.map(({ code }) => code)).toContain('house-policy')
  })
})

it('a round written before version 2 still reads, without a throat and without named drugs', () => {
  const { given: _, throat: __, ...older } = wardScore.example
  expect(wardScore.upcasts[1]?.(older)).toEqual({ ...wardScore.example, given: [], throat: 'not-assessed' })
})

function nullHow() {
  return {
    formulation: null,
    over: null,
    container: null,
    loading: null,
    tablet: null,
    every: null,
    days: null,
    mark: null,
    xylitolFree: null,
    set: null,
    mixed: null,
  }
}
