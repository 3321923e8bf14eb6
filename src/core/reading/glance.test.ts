import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { referral } from '#core/journal/kinds/referral.ts'
import { tansy } from '#demo/spaniel.ts'
import { daysOf } from './days-of.ts'
import { flagsOf } from './flags-of.ts'

describe('entries by day', () => {
  it('hold every entry once, the days in their order', () => {
    const { lines } = fold(tansy().entries)
    const days = daysOf(lines)
    expect(days.flatMap(({ runs }) => runs.flatMap((run) => run.lines)).length).toBe(lines.length)
    expect(days.map(({ day }) => day)).toEqual(days.map(({ day }) => day).sort())
  })

  it('gather many of one kind in a row, and show a few one by one', () => {
    const make = entryMaker()
    const at = '2026-03-01T09:00:00.000Z'
    const notes = [1, 2, 3, 4].map(() => make({ kind: 'note', at }))
    expect(daysOf(fold(notes).lines)[0]?.runs.map(({ lines }) => lines.length)).toEqual([4])
    expect(daysOf(fold(notes.slice(1)).lines)[0]?.runs.map(({ lines }) => lines.length)).toEqual([1, 1, 1])
  })
})

describe('the flags of an animal', () => {
  const make = entryMaker()
  const who = (body: Partial<BodyOf<'identity'>>) => make({ kind: 'identity', body: { ...identity.example, ...body } })
  const called = (answer: 'yes' | 'no' | 'not-asked', what: string | null) =>
    make({ kind: 'referral', body: { ...referral.example, drugAllergy: { answer, what } } })
  const codes = (...entries: Parameters<typeof fold>[0]) => flagsOf(fold(entries)).map(({ code }) => code)

  it('name what must be known before a drug is given', () => {
    expect(codes(who({ flatFace: 'yes', abcb1: 'mutant-mutant' }), called('yes', 'penicillin'))).toEqual([
      'drug-allergy',
      'flat-face',
      'abcb1-mutant',
    ])
  })

  it('say that nobody asked, and do not take that for "no"', () => {
    expect(codes(called('not-asked', null))).toContain('allergy-not-asked')
    expect(codes(called('no', null))).not.toContain('allergy-not-asked')
  })
})
