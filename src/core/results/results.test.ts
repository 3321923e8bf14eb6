import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { watching } from '#content/evidence/watching.ts'
import { countedGroups, countOwn } from '../evidence/own/count-own.ts'
import type { OperatedEar } from '../evidence/own/operated-ear.ts'
import { bestAndWorst, ownRateOf } from '../evidence/own/own-rate.ts'
import { wilsonInterval } from '../stats/proportion-interval.ts'
import { blinkRecovery } from './blink-recovery.ts'
import { earForTests, fortyEars } from './ears-for-tests.ts'
import { tractsByReason } from './tract-by-reason.ts'
import { tractEnd, tractTimes } from './tract-times.ts'
import { watchOf } from './watch.ts'

const question = {
  species: 'dog',
  procedure: 'teca-lbo',
  unit: 'ear',
  outcome: 'facial_nerve_deficit_permanent',
} as const
const today = '2026-11-30'

describe('forty ears of thirty-four dogs, nine lost, two lasting palsies', () => {
  const count = countOwn(question, fortyEars(), today, ownCounting)

  it('are 2 of 31 followed, with both denominators', () => {
    expect(count).toMatchObject({ events: 2, total: 31, lost: 9, notYetDue: 0 })
    expect(countOwn({ ...question, unit: 'animal' }, fortyEars(), today, ownCounting)).toMatchObject({
      lost: 9,
      total: 25,
    })
    expect(new Set(fortyEars().map(({ animal }) => animal)).size).toBe(34)
  })

  it('are 6.5 %, 1.8 to 20.7 by Wilson, and 5.0 to 27.5 % of all forty', () => {
    const wilson = wilsonInterval(count)
    if (wilson.kind === 'refusal') throw new Error('31 ears are known.')
    const percent = (share: number) => Math.round(1000 * share) / 10
    expect(percent(count.events / count.total)).toBe(6.5)
    expect([percent(wilson.answer.low), percent(wilson.answer.high)]).toEqual([1.8, 20.7])
    const span = bestAndWorst(count)
    expect(span && [percent(span.low), percent(span.high)]).toEqual([5, 27.5])
  })

  it('have a wider interval once two ears of one dog are not two dogs, and both palsies are of one', () => {
    const wilson = wilsonInterval(count)
    if (wilson.kind === 'refusal' || !count.acrossAnimals) throw new Error('Both intervals exist.')
    expect(count.acrossAnimals.high).toBeGreaterThan(wilson.answer.high)
    expect(count.acrossAnimals.low).toBeLessThan(wilson.answer.low)
  })
})

describe('none of twelve', () => {
  it('is never nought of 100: it may still be up to 26', () => {
    const ears = Array.from({ length: 12 }, (_, i) =>
      earForTests(i, { known: { facial_nerve_deficit_permanent: false } }),
    )
    const rate = ownRateOf(countOwn(question, ears, today, ownCounting), 20)
    // 1 − 0.025^(1/12)
    expect(rate).toMatchObject({ kind: 'none-yet', total: 12 })
    if (rate.kind === 'none-yet') expect(rate.upTo).toBeCloseTo(0.2646, 4)
  })
})

describe('how long an ear is followed', () => {
  it('ends with a tract, with death before one, or with the last day on which anybody knew', () => {
    expect(tractEnd(earForTests(1, { tractOn: '2026-03-17', followedUntil: '2026-03-17' }), 90)).toEqual({
      time: 431,
      status: 1,
    })
    expect(tractEnd(earForTests(2, { died: '2025-03-10', followedUntil: '2025-02-20' }), 90)).toEqual({
      time: 59,
      status: 2,
    })
    expect(tractEnd(earForTests(3, { followedUntil: '2026-01-10' }), 90)).toEqual({ time: 365, status: 0 })
    expect(tractEnd(earForTests(4), 90)).toEqual({ time: 0, status: 0 })
    expect(tractEnd(earForTests(5, { tractOn: '2025-06-10', died: '2025-03-10' }), 90)).toEqual({ time: 59, status: 2 })
  })

  it('takes a death at month two for an end of its own: the share with a tract is lower than as if it had moved away', () => {
    const ears = [
      ...Array.from({ length: 14 }, (_, i) => earForTests(i, { followedUntil: '2026-03-01' })),
      ...Array.from({ length: 4 }, (_, i) => earForTests(20 + i, { died: '2025-03-10', followedUntil: '2025-02-20' })),
      ...Array.from({ length: 2 }, (_, i) =>
        earForTests(30 + i, { tractOn: '2025-09-10', followedUntil: '2026-03-01' }),
      ),
    ]
    const found = tractTimes(ears, { enough: 10, deathWithinDays: 90 })
    if (found.kind === 'refusal') throw new Error(found.refusal.because)
    expect(found.answer).toMatchObject({ ears: 20, events: 2, died: 4 })
    const [year, two] = found.answer.at
    // 2 of 20, because nobody left before: 16 of 20 alive, 2 of those 16.
    expect(year).toMatchObject({ kind: 'said', followed: 14 })
    if (year?.kind !== 'said') throw new Error('Fourteen are followed for a year.')
    expect(year.share).toBeCloseTo(0.1, 12)
    expect(year.withoutDeaths).toBeCloseTo(0.125, 12)
    expect(two).toMatchObject({ kind: 'too-few', followed: 0 })
  })

  it('never takes silence for "free of it": a death heard of long after the last look lets the ear leave with that look', () => {
    const silent = { followedUntil: '2025-01-20', died: '2027-06-01' }
    expect(tractEnd(earForTests(1, silent), 90)).toEqual({ time: 10, status: 0 })
    const ears = Array.from({ length: 12 }, (_, i) => earForTests(i, silent))
    const found = tractTimes(ears, { enough: 10, deathWithinDays: 90 })
    if (found.kind === 'refusal') throw new Error(found.refusal.because)
    expect(found.answer).toMatchObject({ died: 0, mean: null })
    expect(found.answer.at.map(({ kind, followed }) => [kind, followed])).toEqual([
      ['too-few', 0],
      ['too-few', 0],
    ])
  })

  it('says how high the share could still be where nobody has had one', () => {
    const ears = Array.from({ length: 12 }, (_, i) => earForTests(i, { followedUntil: '2026-06-01' }))
    const found = tractTimes(ears, { enough: 10, deathWithinDays: 90 })
    if (found.kind === 'refusal') throw new Error(found.refusal.because)
    const [year] = found.answer.at
    // 1 − 0.025^(1/12)
    expect(year?.kind === 'said' && year.upTo).toBeCloseTo(0.2646, 4)
  })

  it('draws no share from the time when too few are followed: one late tract would be nearly all of 100', () => {
    const ears = [
      ...Array.from({ length: 30 }, (_, i) => earForTests(i, { followedUntil: '2026-02-14' })),
      earForTests(40, { tractOn: '2026-03-16', followedUntil: '2026-03-16' }),
    ]
    const found = tractTimes(ears, { enough: 10, deathWithinDays: 90 })
    if (found.kind === 'refusal') throw new Error(found.refusal.because)
    expect(found.answer.steps.at(-1)).toEqual({
      day: 430,
      followed: 1,
      events: 1,
      died: 0,
      share: null,
      interval: null,
    })
    expect(found.answer.at[0]).toMatchObject({ kind: 'said', share: 0, interval: null })
  })

  it('says nothing of a year for which too few are followed', () => {
    const found = tractTimes([earForTests(1, { followedUntil: '2026-06-01' })], { enough: 10, deathWithinDays: 90 })
    if (found.kind === 'refusal') throw new Error(found.refusal.because)
    expect(found.answer.at.map(({ kind }) => kind)).toEqual(['too-few', 'too-few'])
    expect(tractTimes([], { enough: 10, deathWithinDays: 90 }).kind).toBe('refusal')
  })
})

describe('until the blink was back', () => {
  it('counts the looks that found it, and those still waiting', () => {
    const blink = (lostOn: string, backOn: string | null, lastLookOn: string) => ({
      blink: { lostOn, backOn, lastLookOn },
    })
    const ears = [
      earForTests(1, blink('2025-01-12', '2025-01-24', '2025-01-24')),
      earForTests(2, blink('2025-01-12', '2025-02-10', '2025-02-10')),
      earForTests(3, blink('2025-01-12', null, '2025-03-10')),
      earForTests(4),
    ]
    expect(blinkRecovery(ears)).toMatchObject({ ears: 3, back: 2, half: { value: 31 } })
    expect(blinkRecovery([earForTests(4)])).toBeNull()
  })
})

describe('results watched in their order', () => {
  const watch = (events: readonly boolean[], risk: number | null = 0.1) => {
    const ears = events.map((event, i) =>
      earForTests(i, {
        on: `2025-01-${String(i + 1).padStart(2, '0')}`,
        known: { facial_nerve_deficit_permanent: event },
      }),
    )
    return watchOf(question, countedGroups(question, ears, today, ownCounting), () => risk, watching)
  }
  const none = Array.from({ length: 30 }, () => false)

  it('are no chart while there are too few, and none where no study says what to expect', () => {
    expect(watch(none.slice(1))).toMatchObject({ kind: 'too-few', known: 29 })
    expect(watch(none, null)).toMatchObject({ kind: 'nothing-expected', known: 30 })
  })

  it('stay at nought while nothing happens, and signal after a run of events', () => {
    const calm = watch(none)
    if (calm.kind !== 'watched') throw new Error('Thirty are enough.')
    expect(calm.points.every(({ value, signal }) => value === 0 && !signal)).toBe(true)
    // Steiner 2000 with p = 0.1 and R = 2: each event adds ln(2 / 1.1) = 0.598; the sixth reaches 3.5.
    const run = watch([...none.slice(6), true, true, true, true, true, true])
    if (run.kind !== 'watched') throw new Error('Thirty are enough.')
    expect(run.points.map(({ signal }) => signal).indexOf(true)).toBe(29)
    expect(run.points.at(-1)?.value).toBeCloseTo(6 * Math.log(2 / 1.1), 12)
  })

  it('state how often the design is wrong over a hundred operations', () => {
    const found = watch(none)
    if (found.kind !== 'watched') throw new Error('Thirty are enough.')
    expect(found.falseAlarm).toBeGreaterThan(0.02)
    expect(found.falseAlarm).toBeLessThan(0.166)
    expect(found.rightAlarm).toBeGreaterThan(0.573)
  })

  it('put a result that became known late at its own place', () => {
    const ears = [3, 1, 2].map((day) =>
      earForTests(day, { on: `2025-01-0${day}`, known: { facial_nerve_deficit_permanent: day === 1 } }),
    )
    const found = watchOf(question, countedGroups(question, ears, today, ownCounting), () => 0.1, {
      ...watching,
      least: { ...watching.least, value: 3 },
    })
    if (found.kind !== 'watched') throw new Error('Three are asked for.')
    expect(found.points.map(({ on, event }) => [on, event])).toEqual([
      ['2025-01-01', true],
      ['2025-01-02', false],
      ['2025-01-03', false],
    ])
  })
})

describe('late tracts by the main reason', () => {
  const group = (from: number, count: number, reason: OperatedEar['reason'], tracts: number) =>
    Array.from({ length: count }, (_, i) =>
      earForTests(from + i, {
        reason,
        followedUntil: '2026-06-01',
        ...(i < tracts && { tractOn: `2025-0${(i % 8) + 2}-10` }),
      }),
    )

  it('are compared between reasons with enough followed ears; a smaller group is named, ears without one are in none', () => {
    const ears = [
      ...group(0, 20, 'chronic-otitis', 1),
      ...group(100, 20, 'tumour', 8),
      ...group(200, 3, 'polyp', 0),
      ...group(300, 30, 'not-recorded', 30),
    ]
    const found = tractsByReason(ears, 20, 90)
    expect(found).toMatchObject({
      kind: 'compared-over-time',
      degrees: 1,
      compared: [
        { reason: 'chronic-otitis', ears: 20, events: 1 },
        { reason: 'tumour', ears: 20, events: 8 },
      ],
      tooFew: [{ reason: 'polyp', ears: 3, events: 0 }],
    })
    // Nine events at eight days, each of one ear but the first: the hypergeometric sums, added up by hand in a loop.
    if (found.kind !== 'compared-over-time') throw new Error(found.kind)
    let [over, spread, first, second] = [0, 0, 20, 20]
    for (const [mine, others] of [[1, 1], ...Array.from({ length: 7 }, () => [0, 1])] as [number, number][]) {
      const [all, events] = [first + second, mine + others]
      over += mine - (events * first) / all
      spread += (events * (first / all) * (second / all) * (all - events)) / (all - 1)
      first -= mine
      second -= others
    }
    expect(found.chiSquare).toBeCloseTo(over ** 2 / spread, 10)
    expect(found.p).toBeLessThan(0.05)
  })

  it('are not compared with one large group, nor where nobody had one', () => {
    const large = group(0, 20, 'chronic-otitis', 2)
    expect(tractsByReason([...large, ...group(100, 19, 'tumour', 2)], 20, 90)).toMatchObject({
      kind: 'fewer-than-two',
      tooFew: [{ reason: 'tumour', ears: 19 }],
    })
    const none = [...group(0, 20, 'chronic-otitis', 0), ...group(100, 20, 'tumour', 0)]
    expect(tractsByReason(none, 20, 90).kind).toBe('no-event')
  })

  it('leave out ears of which nobody has said anything', () => {
    const silent = Array.from({ length: 20 }, (_, i) => earForTests(i, { reason: 'tumour' }))
    expect(tractsByReason([...silent, ...group(100, 20, 'polyp', 1)], 20, 90)).toMatchObject({
      kind: 'fewer-than-two',
      tooFew: [],
    })
  })
})
