import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { discharge } from '#core/journal/kinds/discharge.ts'
import { drugGiven } from '#core/journal/kinds/drug-given.ts'
import { wardScore } from '#core/journal/kinds/ward-score.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'

const make = entryMaker()
const dog = make({ kind: 'identity' })

function round(at: string, change: Partial<BodyOf<'ward-score'>>): Entry {
  return make({ kind: 'ward-score', at, body: { ...wardScore.example, rescoreAt: null, ...change } })
}

function owed(...entries: readonly Entry[]) {
  const all = owedOf(fileOf([dog, ...entries]), procedures, { rules: owedRules })
  const ours = (what: string) => what === 'pain-to-treat' || what === 'pain-again'
  return {
    open: all.owed.filter(({ what }) => ours(what)),
    closed: all.closed.filter(({ item }) => ours(item.what)).map(({ item, because }) => `${item.what}: ${because}`),
  }
}

const noon = '2026-02-10T12:00:00.000Z'
const later = '2026-02-10T12:40:00.000Z'
const seven = { pain: { scale: 'glasgow-dog-short', score: 7 } } as const
const three = { pain: { scale: 'glasgow-dog-short', score: 3 } } as const
const rescoreAt = { at: '2026-02-10T12:30:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' } as const

describe('a score that asks for relief', () => {
  it('is owed an action when none was written, and says the limit (Reid 2007: 6 of 24)', () => {
    const [item, ...more] = owed(round(noon, { ...seven, action: null })).open
    expect(more).toEqual([])
    expect(item && sayOwed(item, owedInEnglish)).toMatchObject({
      what: 'Pain 7 of 24: more relief, and say what was done',
      why: expect.stringContaining('from 6 on'),
    })
    expect(item?.facts.flatMap(({ sources }) => sources)).toEqual(['reid-2007'])
  })

  it('owes nothing below the limit, or where no limit is published', () => {
    expect(owed(round(noon, { ...three, action: null })).open).toEqual([])
    expect(owed(round(noon, { pain: { scale: 'house-0-10', score: 9 }, action: null })).open).toEqual([])
  })

  it('is answered by a drug that was given or by the next score', () => {
    const high = round(noon, { ...seven, action: null })
    expect(owed(high, make({ kind: 'drug-given', at: later })).closed).toEqual(['pain-to-treat: settled'])
    expect(owed(high, round(later, three)).closed).toEqual(['pain-to-treat: settled'])
  })
})

describe('what was done about a score', () => {
  const methadone = { ...drugGiven.example, drug: 'methadone', use: 'analgesia_bolus', line: null }

  it('is followed by another score within the hour, whether it was written in words or named as a drug', () => {
    expect(owed(round(noon, seven)).open).toMatchObject([
      { what: 'pain-again', dueFrom: '2026-02-10T12:30:00.000Z', dueBy: '2026-02-10T13:00:00.000Z' },
    ])
    const drug = make({ kind: 'drug-given', at: later, body: methadone })
    const named = round(noon, { ...three, action: null, given: [drug.id] })
    expect(owed(named, drug).open).toMatchObject([{ what: 'pain-again', dueBy: '2026-02-10T13:40:00.000Z' }])
  })

  it('is a drug against pain; an eye gel answers no score', () => {
    const high = round(noon, { ...seven, action: null })
    const gel = make({ kind: 'drug-given', at: later, body: { ...methadone, drug: 'carbomer', use: 'eye' } })
    expect(owed(high, gel).open).toMatchObject([{ what: 'pain-to-treat' }])
    const open = owed(high, make({ kind: 'drug-given', at: later, body: methadone }))
    expect(open.closed).toEqual(['pain-to-treat: settled'])
    expect(open.open).toMatchObject([{ what: 'pain-again', dueBy: '2026-02-10T13:40:00.000Z' }])
  })

  it('is not every dose by the clock: after a low score nothing is scored again because of it', () => {
    const low = round(noon, { ...three, action: null })
    expect(owed(low, make({ kind: 'drug-given', at: later, body: methadone })).open).toEqual([])
  })
})

describe('a time to score again', () => {
  const first = round(noon, { ...seven, rescoreAt })

  it('is owed from the score until that time', () => {
    expect(owed(first).open).toMatchObject([{ what: 'pain-again', dueFrom: noon, dueBy: rescoreAt.at }])
  })

  it('is settled by a score on either form, late when it came late, and not by "not scored"', () => {
    const observed = make({
      kind: 'observation',
      at: '2026-02-10T12:25:00.000Z',
      subject: { kind: 'animal', animal: 'animal-1' },
      body: {
        where: 'ward',
        values: [],
        pain: { scale: 'x', score: 1, outOf: 10 },
        first: null,
        side: null,
        unmeasured: null,
        text: null,
      },
    })
    expect(owed(first, observed).closed).toEqual(['pain-again: settled'])
    expect(owed(first, round(later, three)).closed).toEqual(['pain-again: settled-late'])
    const asleep = round(later, { pain: null, notScoredBecause: 'Asleep.' })
    expect(owed(first, asleep).open).toHaveLength(1)
  })

  it('ends when the animal goes home, and with its death', () => {
    const home = make({ kind: 'discharge', at: later, body: discharge.example })
    expect(owed(first, home).closed).toEqual(['pain-again: not-needed'])
    const death = make({ kind: 'death', at: later })
    expect(owed(first, death)).toEqual({ open: [], closed: ['pain-again: death'] })
  })
})
