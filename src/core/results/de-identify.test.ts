import { describe, expect, it } from 'vitest'
import type { OperatedEar } from '#core/evidence/own/operated-ear.ts'
import type { KnownOutcome } from '#core/evidence/own/own-outcome.ts'
import { type OwnOutcome, ownOutcomes } from '#core/evidence/own/own-outcome.ts'
import { deIdentify } from './de-identify.ts'

const known = Object.fromEntries(ownOutcomes.map((one) => [one, null])) as Record<OwnOutcome, KnownOutcome>
const salt = 'invented words for a test'

function ear(animal: string, more: Partial<OperatedEar> = {}): OperatedEar {
  const operation = `operation-of-${animal}-${more.side ?? 'LEFT'}`
  return {
    animal,
    operation,
    session: operation,
    species: 'dog',
    procedure: 'teca-lbo',
    reason: 'not-recorded',
    side: 'LEFT',
    on: '2025-03-04',
    died: null,
    known,
    stream: `case:${animal}`,
    followedUntil: null,
    tractOn: null,
    blink: null,
    troubles: [],
    ofNoSide: [],
    ...more,
  }
}

function rowsOf(ears: readonly OperatedEar[], more = {}) {
  const made = deIdentify(ears, { salt, smallBelow: 3, ...more })
  if (made.kind === 'refusal') throw new Error(made.refusal.because)
  return made.answer
}

const five = ['bramble', 'tansy', 'sorrel', 'rowan', 'barley'].map((name) => ear(name))

describe('rows for somebody outside', () => {
  it('hold no id, no date and no name of ours', () => {
    const said = JSON.stringify(rowsOf([...five, ear('teasel', { died: '2025-05-03' })]))
    expect(said).not.toMatch(/bramble|tansy|sorrel|rowan|barley|teasel|operation-of|\d{4}-\d{2}/)
  })

  it('say a death as days since the operation', () => {
    const { ears } = rowsOf([...five, ear('teasel', { died: '2025-05-03' })])
    expect(
      ears.filter(({ diedAfterDays }) => diedAfterDays !== null).map(({ diedAfterDays }) => diedAfterDays),
    ).toEqual([60])
  })

  it('are the same with the same salt whatever the order, and numbered otherwise with another', () => {
    const sides = five.map((one, place) => ({ ...one, died: `2025-06-0${place + 1}` }))
    expect(rowsOf([...sides].reverse())).toEqual(rowsOf(sides))
    const order = (words: string) => rowsOf(sides, { salt: words }).ears.map(({ diedAfterDays }) => diedAfterDays)
    const orders = ['first salt of a test', 'second salt of a test', 'third salt of a test'].map(order)
    expect(new Set(orders.map(String)).size).toBeGreaterThan(1)
  })

  it('keep two ears of one animal together, and one anaesthetic', () => {
    const both = [ear('bramble', { session: 's' }), ear('bramble', { side: 'RIGHT', session: 's' })]
    const { ears } = rowsOf([...both, ...five.slice(1)])
    const pairs = ears.filter((one) => ears.filter(({ animal }) => animal === one.animal).length === 2)
    expect(pairs.map(({ side }) => side).sort()).toEqual(['LEFT', 'RIGHT'])
    expect(new Set(pairs.map(({ anaesthetic }) => anaesthetic)).size).toBe(1)
  })

  it('withhold a year that too few animals share, and name the cell; two ears are one animal', () => {
    const few = [ear('teasel', { on: '2024-01-02' }), ear('teasel', { on: '2024-01-02', side: 'RIGHT' })]
    const { ears, smallCells } = rowsOf([...five, ...few, ear('thistle', { on: '2024-05-06' })])
    expect(ears.filter(({ year }) => year === null)).toHaveLength(3)
    expect(ears.filter(({ year }) => year === '2025')).toHaveLength(5)
    expect(smallCells).toEqual([{ species: 'dog', procedure: 'teca-lbo', year: '2024' }])
  })

  it('name a species that is small over all years', () => {
    expect(rowsOf([...five, ear('cat', { species: 'cat' })]).smallCells).toEqual([
      { species: 'cat', procedure: 'teca-lbo', year: null },
      { species: 'cat', procedure: 'teca-lbo', year: '2025' },
    ])
  })

  it('are refused with a salt that can be guessed, and with cells of one', () => {
    expect(deIdentify(five, { salt: 'short', smallBelow: 5 })).toMatchObject({ refusal: { because: 'salt-too-short' } })
    expect(deIdentify(five, { salt, smallBelow: 1 })).toMatchObject({ refusal: { because: 'small-below-two' } })
  })
})
