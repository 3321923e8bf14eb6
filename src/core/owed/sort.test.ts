import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { owedRisks } from '#content/follow-up/owed-risks.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { moss } from '#demo/cat.ts'
import { tansy } from '#demo/spaniel.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { owedCodeOf, settledBy } from './owed-code-of.ts'
import { owedCodes } from './owed-item.ts'
import { deputyOf, type OwedLine, ownership, riskOf, sortOwed } from './sort.ts'

const now = '2026-03-20T12:00:00.000Z'
const row = (id: string, dueFrom: string, dueBy: string, who = 'nurse'): OwedLine => ({
  id,
  who,
  dueFrom: `2026-${dueFrom}T00:00:00.000Z`,
  dueBy: `2026-${dueBy}T23:59:59.000Z`,
})

describe('what is owed in order', () => {
  it('leads with an eye at risk that may be looked at now, then what is late, then what is due, then what comes', () => {
    const rows = [
      row('first-call:o', '03-25', '03-27'),
      row('recheck-3-months:o', '03-01', '03-10'),
      row('eye:o:LEFT:root:0', '03-19', '03-26'),
      row('eye:p:LEFT:root:0', '03-24', '03-31'),
      row('result-to-read:r', '03-15', '03-16'),
      row('suture-check:o', '03-18', '03-22'),
      row('consent-before-operation:o', '03-18', '03-22'),
      row('unprojected', '03-10', '03-11', 'desk'),
    ]
    expect(sortOwed(rows, now, owedRisks).map(({ id }) => id.split(':').slice(0, 2).join(':'))).toEqual([
      'eye:o',
      'result-to-read:r',
      'recheck-3-months:o',
      'unprojected',
      'consent-before-operation:o',
      'suture-check:o',
      'eye:p',
      'first-call:o',
    ])
  })

  it('loses no row and does not depend on the order they came in', () => {
    const day = fc.integer({ min: 10, max: 28 }).map(String)
    const any = fc.record({ code: fc.constantFrom(...owedCodes), key: fc.nat(), from: day, by: day })
    fc.assert(
      fc.property(fc.array(any, { maxLength: 20 }), (made) => {
        const rows = made.map(({ code, key, from, by }, at) => row(`${code}:${key}:${at}`, `03-${from}`, `03-${by}`))
        const sorted = sortOwed(rows, now, owedRisks)
        expect(sortOwed([...rows].reverse(), now, owedRisks)).toEqual(sorted)
        expect(sorted.length).toBe(rows.length)
      }),
    )
  })

  it('reads the code of every id that the rules of owing make', () => {
    const withDates = { rules: owedRules, plannedCountsAs: 'done' } as const
    const items = [tansy, moss].flatMap((chart) => {
      const { owed, closed } = owedOf(fileOf(chart().entries), procedures, withDates)
      return [...owed, ...closed.map(({ item }) => item)]
    })
    expect(new Set(items.map(({ what }) => what)).size).toBeGreaterThan(15)
    for (const { id, what } of items) expect(owedCodeOf(id), id).toBe(what)
  })

  it('says by whom a class of risk stands, and a kind or nothing for every code', () => {
    expect(riskOf('eye:o:LEFT:x:0', owedRisks).fact?.sources).toContain('eye-care-texts')
    expect(riskOf('unprojected', owedRisks)).toEqual({ class: 'record', fact: null })
    expect(Object.keys(settledBy).sort()).toEqual([...owedCodes].sort())
  })
})

describe('mine and everyone’s', () => {
  const people = [
    { id: 'holm', role: 'surgeon' },
    { id: 'adeyemi', role: 'anaesthetist' },
    { id: 'lind', role: 'nurse' },
  ]
  const [holm, adeyemi, lind] = people as [(typeof people)[0], (typeof people)[0], (typeof people)[0]]
  const away = [{ person: 'holm', from: '2026-03-18', until: '2026-03-25', deputy: 'adeyemi' }]
  const mine = (who: string, me: typeof holm, day = '2026-03-20') => ownership({ who }, me, people, away, day)

  it('is mine by name and by role', () => {
    expect(mine('lind', lind)).toEqual({ kind: 'mine', because: 'by-name' })
    expect(mine('nurse', lind)).toEqual({ kind: 'mine', because: 'by-role' })
    expect(mine('desk', lind)).toEqual({ kind: 'others' })
  })

  it('goes to the deputy while somebody is away, by name and by role, and comes back', () => {
    expect(mine('holm', adeyemi)).toEqual({ kind: 'mine', because: 'as-deputy', of: 'holm' })
    expect(mine('holm', holm)).toEqual({ kind: 'others' })
    expect(mine('surgeon', adeyemi)).toEqual({ kind: 'mine', because: 'as-deputy', of: 'holm' })
    expect(mine('holm', holm, '2026-03-26')).toEqual({ kind: 'mine', because: 'by-name' })
    expect(mine('surgeon', adeyemi, '2026-03-26')).toEqual({ kind: 'others' })
  })
})

describe('who stands in for the person a row names', () => {
  const people = [
    { id: 'person-a', role: 'surgeon' },
    { id: 'person-b', role: 'nurse' },
  ]
  const leaves = [{ person: 'person-a', from: '2026-03-20', until: '2026-03-22', deputy: 'person-b' }]

  it('is the deputy on a day of leave, the last one too, and nobody on any other', () => {
    const on = (day: string) => deputyOf({ who: 'person-a' }, people, leaves, day)
    expect(['2026-03-19', '2026-03-20', '2026-03-22', '2026-03-23'].map(on)).toEqual([
      null,
      'person-b',
      'person-b',
      null,
    ])
  })

  it('is nobody for a role, for somebody who is here, and for somebody unknown', () => {
    const who = ['surgeon', 'person-b', 'person-c']
    expect(who.map((one) => deputyOf({ who: one }, people, leaves, '2026-03-21'))).toEqual([null, null, null])
  })
})
