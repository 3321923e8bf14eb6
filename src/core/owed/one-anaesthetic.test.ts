import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { theatreStamp } from '#core/journal/kinds/theatre-stamp.ts'
import { anaestheticOf, oneAnaesthetic } from './one-anaesthetic.ts'
import { operationsOf } from './operations.ts'

const make = entryMaker()
const about = (operation: string) => ({ kind: 'operation', animal: 'animal-1', operation }) as const

function booked(operation: string, side: 'LEFT' | 'RIGHT', at: string): Entry {
  const plannedFor = { ...booking.example.plannedFor, at: `2026-03-${at}:00.000Z` }
  return make({ kind: 'booking', subject: about(operation), body: { ...booking.example, side, plannedFor } })
}

function stamped(operation: string, checkpoint: string, at: string): Entry {
  const body = { ...theatreStamp.example, checkpoint, detail: {} }
  return make({ kind: 'theatre-stamp', subject: about(operation), body, at: `2026-03-${at}:00.000Z` })
}

function pair(entries: readonly Entry[], of = 'one') {
  const theCase = fold(entries)
  const operations = operationsOf({ theCase })
  const operation = operations.find(({ id }) => id === of)
  if (!operation) throw new Error(`There is no operation ${of}.`)
  const found = oneAnaesthetic(operation, operations, theCase)
  return { order: found && [found.first.id, found.second.id], all: anaestheticOf(operation, operations, theCase) }
}

describe('both ears under one anaesthetic', () => {
  const both = [booked('one', 'LEFT', '10T09:00'), booked('two', 'RIGHT', '10T10:30')]

  it('are two operations on both sides within half a day, also over midnight', () => {
    expect(pair(both).order).toEqual(['one', 'two'])
    expect(pair(both, 'two').order).toEqual(['one', 'two'])
    expect(pair([booked('one', 'LEFT', '10T23:30'), booked('two', 'RIGHT', '11T01:00')]).order).toEqual(['one', 'two'])
  })

  it('are not one ear twice, nor weeks apart', () => {
    expect(pair([booked('one', 'LEFT', '10T09:00'), booked('two', 'LEFT', '10T10:30')])).toEqual({
      order: null,
      all: ['one'],
    })
    expect(pair([booked('one', 'LEFT', '10T09:00'), booked('two', 'RIGHT', '31T09:00')]).order).toBeNull()
  })

  it('begin with the one that was cut, whatever the list said', () => {
    expect(pair([...both, stamped('two', 'incision', '10T09:20')]).order).toEqual(['two', 'one'])
  })

  it('are two anaesthetics when the second began by a stamp of its own after the tube of the first was out', () => {
    const first = [stamped('one', 'incision', '10T09:10'), stamped('one', 'tube-out', '10T10:30')]
    expect(pair([...both, ...first]).order).toEqual(['one', 'two'])
    expect(pair([...both, ...first, stamped('two', 'anaesthesia-start', '10T14:00')]).order).toBeNull()
  })
})
