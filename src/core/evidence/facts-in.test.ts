import { describe, expect, it } from 'vitest'
import { bupivacaine } from '#content/formulary/bupivacaine.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { citedIn, factsIn, membersOf } from './facts-in.ts'

const known = { known: 'read', strength: 'label', confidence: 'high', checked: '2026-11-25' } as const

describe('the facts inside a value of content', () => {
  it('are found at any depth, in the order they stand, with the names that lead to them', () => {
    const paths = factsIn(bupivacaine).map(({ path }) => path.join('.'))
    expect(paths.slice(0, 4)).toEqual([
      'localAnaesthetic.limits.dog',
      'localAnaesthetic.limits.cat',
      'localAnaesthetic.otherLimits.0',
      'localAnaesthetic.washout',
    ])
    expect(paths).toContain('doses.1.otherRanges.0')
    expect(paths.at(-1)).toBe('none.0')
  })

  it('may hold other facts, and both are found', () => {
    const outer = { sources: ['a'], ...known, because: 'x', washouts: [{ value: 1, sources: ['b'], ...known }] }
    expect(factsIn(outer).map(({ path }) => path.join('.'))).toEqual(['', 'washouts.0'])
    expect(citedIn(outer)).toEqual(['a', 'b'])
  })

  it('do not look into quantities and decimals, and find nothing in plain words', () => {
    expect(factsIn({ text: 'no source', list: ['a', 1, null] })).toEqual([])
    expect(factsIn(dosingRules.overRange).map(({ path }) => path)).toEqual([[]])
  })

  it('say what they say apart from how it is known', () => {
    expect(membersOf({ words: 'once', sources: ['a'], where: 'page 2', ...known })).toEqual([['words', 'once']])
    expect(membersOf({ words: 'once', where: 'a place' })).toEqual([
      ['words', 'once'],
      ['where', 'a place'],
    ])
  })
})
