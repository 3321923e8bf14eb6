import { describe, expect, it } from 'vitest'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { pauseItem } from '#core/journal/kinds/pause-item.ts'
import { besides, pauseRunOf, whoLast } from './pause-run.ts'

type Body = BodyOf<'pause-item'>
const pause = spokenPauses.find((one) => one.pause === 'before-incision') ?? fail()
const order = pause.items.map(({ id }) => id)

function fail(): never {
  throw new Error('There is no pause before the incision.')
}

const make = entryMaker()

function answer(at: string, item: string, body: Partial<Body> = {}, rest: Partial<Entry> = {}): Entry {
  return make({
    kind: 'pause-item',
    body: { ...pauseItem.example, item, ...body },
    happenedAt: { at: `2026-03-${at}.000Z`, zone: 'Europe/Paris', precision: 'second', by: 'clock' },
    ...rest,
  } as Parameters<typeof make>[0])
}

const run = (...entries: Entry[]) => pauseRunOf(fold(entries), 'operation-1', pause)

describe('a spoken pause', () => {
  it('keeps the order in which it is read aloud, whatever was answered first', () => {
    const found = run(answer('10T09:02:00', 'concerns'), answer('10T09:00:00', 'names-and-roles'))
    expect(found.items.map(({ id }) => id)).toEqual(order)
    expect(found.open.map(({ id }) => id)).toEqual(order.slice(1, -1))
  })

  it('counts only its own operation and its own pause', () => {
    const other = { kind: 'operation', animal: 'animal-1', operation: 'operation-2' } as const
    const found = run(
      answer('10T09:00:00', 'concerns', {}, { subject: other }),
      answer('10T09:00:00', 'concerns', { pause: 'before-leaving' }),
    )
    expect(found.open).toHaveLength(order.length)
    expect(found.span).toBeNull()
  })

  it('holds what the house worded itself, after the others', () => {
    const found = run(answer('10T09:00:00', 'music-off', { answer: 'no', because: 'It plays.' }))
    expect(found.items.at(-1)).toMatchObject({ id: 'music-off', asked: null })
    expect(found.unsettled.map(({ id }) => id)).toEqual(['music-off'])
  })

  it('is not settled by no, by not known, or by two answers side by side', () => {
    const found = run(
      answer('10T09:00:00', 'names-and-roles'),
      answer('10T09:00:10', 'eyes-lubricated', { answer: 'no', because: 'The right one is not.' }),
      answer('10T09:00:20', 'antibiotic', { answer: 'unknown', because: 'Nobody saw it given.' }),
      answer('10T09:00:30', 'vein-plan'),
      answer('10T09:00:31', 'vein-plan'),
    )
    expect(found.unsettled.map(({ id }) => id)).toEqual(['eyes-lubricated', 'antibiotic', 'vein-plan'])
  })

  it('lasts from its first answer to its last, over midnight too', () => {
    expect(run(answer('10T09:00:00', 'concerns')).span).toBeNull()
    expect(run(answer('10T23:58:50', 'names-and-roles'), answer('11T00:01:05', 'concerns')).span).toEqual({
      seconds: 135,
      fine: 'second',
    })
  })

  it('lasts as long when the clocks change in between', () => {
    // In Paris 02:00 became 03:00 on 29 March 2026, at 01:00 UTC.
    expect(run(answer('29T00:59:00', 'names-and-roles'), answer('29T01:02:00', 'concerns')).span?.seconds).toBe(180)
  })

  it('is no finer than its moments: minutes where a person typed one, nothing where only the day is known', () => {
    const typed = (precision: 'minute' | 'day') =>
      ({ at: '2026-03-10T09:00:00.000Z', zone: 'Europe/Paris', precision, by: 'person' }) as const
    const last = answer('10T09:02:30', 'concerns')
    expect(run(answer('', 'antibiotic', {}, { happenedAt: typed('minute') }), last).span).toEqual({
      seconds: 150,
      fine: 'minute',
    })
    expect(run(answer('', 'antibiotic', {}, { happenedAt: typed('day') }), last).span).toBeNull()
  })

  it('began with an answer that was spoken otherwise later, and not with a moment that was corrected', () => {
    const no = answer('10T09:00:00', 'antibiotic', { answer: 'no', because: 'Not drawn up.' })
    const others = answer('10T09:01:00', 'concerns')
    const yes = answer('10T09:10:00', 'antibiotic', {}, { supersedes: [no.id], reason: 'Given now.' })
    expect(run(no, others, yes)).toMatchObject({ unsettled: [], span: { seconds: 600 } })
    const early = answer('10T06:00:00', 'antibiotic')
    const right = answer('10T09:00:30', 'antibiotic', {}, { supersedes: [early.id], reason: 'The hour was wrong.' })
    expect(run(early, others, right).span?.seconds).toBe(30)
  })

  it('leads from item to item', () => {
    const { items } = run()
    expect(besides(items, order[0] ?? '')).toEqual({ back: null, next: order[1] })
    expect(besides(items, 'concerns')).toEqual({ back: order.at(-2), next: null })
    expect(besides(items, 'nothing')).toEqual({ back: null, next: null })
  })

  it('remembers who spoke and led for whoever wrote it, and nobody for another person', () => {
    const found = run(
      answer('10T09:00:00', 'names-and-roles', { spokenBy: 'person-a', ledBy: 'person-b' }),
      answer(
        '10T09:00:10',
        'concerns',
        { spokenBy: 'person-c', ledBy: null },
        { writtenAt: '2027-01-01T00:00:00.000Z' },
      ),
    )
    expect(whoLast(found, 'person-surgeon')).toEqual({ spokenBy: 'person-c', ledBy: null })
    expect(whoLast(found, 'person-else')).toEqual({ spokenBy: null, ledBy: null })
  })
})
