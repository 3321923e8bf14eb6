import { describe, expect, it } from 'vitest'
import { type Series, study } from './study.ts'

const seen = { where: 'an invented page', known: 'read', strength: 'study', checked: '2026-11-25' } as const
const row = { outcome: 'horner_any', events: 3, total: 10, basis: 'stated', confidence: 'high' } as const
const dogs = { species: 'dog', procedure: 'teca-lbo', unit: 'ear', animals: 8 } as const

function written(...series: Series[]) {
  return study({ id: 'invented-2020', year: 2020, design: 'unknown', seen, series })
}

describe('study', () => {
  it('completes every row with its own provenance', () => {
    expect(written({ ...dogs, outcomes: [row] }).rows).toEqual([
      {
        study: 'invented-2020',
        sources: ['invented-2020'],
        where: 'an invented page',
        known: 'read',
        strength: 'study',
        checked: '2026-11-25',
        species: 'dog',
        procedure: 'teca-lbo',
        touches: [],
        unit: 'ear',
        animals: 8,
        outcome: 'horner_any',
        counted: { kind: 'count', events: 3, total: 10 },
        basis: 'stated',
        confidence: 'high',
        pool: { use: 'primary' },
        followed: { kind: 'not-stated' },
      },
    ])
  })

  it('lets a row say more than its series: remarks are joined, the follow-up of the row wins', () => {
    const [only] = written({
      ...dogs,
      followed: 'a year',
      remark: 'Of the series.',
      outcomes: [{ ...row, followed: 'a day', remark: 'Of the row.' }],
    }).rows
    expect(only).toMatchObject({ followed: { kind: 'stated', text: 'a day' }, remark: 'Of the series. Of the row.' })
  })

  it('keeps a percentage without its count as printed', () => {
    const pool = { use: 'no', because: 'percent-only' } as const
    const printed = { outcome: 'horner_any', percent: '14 %', basis: 'percent-only', confidence: 'low', pool } as const
    expect(written({ ...dogs, outcomes: [printed] }).rows[0]?.counted).toEqual({
      kind: 'percent-only',
      printed: '14 %',
    })
  })

  it.each([
    [11, 10],
    [-1, 10],
    [1.5, 10],
  ])('does not accept %s of %s', (events, total) => {
    expect(() => written({ ...dogs, outcomes: [{ ...row, events, total }] })).toThrow('is not a count')
  })

  it('does not accept a count of nobody', () => {
    expect(() => written({ ...dogs, outcomes: [{ ...row, events: 0, total: 0 }] })).toThrow('nothing was counted')
  })

  it('does not let dogs and cats together be primary', () => {
    expect(() => written({ ...dogs, species: 'mixed', outcomes: [row] })).toThrow('dogs and cats together')
  })

  it('does not let a subgroup, one of two readings, a bare percentage or a memory be primary', () => {
    const percent = { outcome: 'horner_any', percent: '14 %', basis: 'percent-only', confidence: 'low' } as const
    expect(() => written({ ...dogs, outcomes: [{ ...row, subgroup: 'one side' }] })).toThrow('subgroup')
    expect(() => written({ ...dogs, outcomes: [{ ...row, reading: 'A' }] })).toThrow('two readings')
    expect(() => written({ ...dogs, outcomes: [percent] })).toThrow('without its count')
    expect(() => written({ ...dogs, outcomes: [{ ...row, known: 'remembered' }] })).toThrow('was read')
  })

  it('does not let one outcome be counted twice in the same unit', () => {
    expect(() => written({ ...dogs, outcomes: [row, row] })).toThrow('counted twice')
    expect(written({ ...dogs, outcomes: [row] }, { ...dogs, unit: 'animal', outcomes: [row] }).rows).toHaveLength(2)
  })
})
