import { describe, expect, it } from 'vitest'
import { unitList } from './unit.ts'
import { typedUnit, unitWord } from './unit-words.ts'

describe('the words of units', () => {
  it('lead back to the unit they stand for, so that what is shown can be typed', () => {
    for (const unit of unitList) expect(typedUnit(unitWord(unit)), unit).toBe(unit)
  })

  it('know what a hand writes', () => {
    expect(typedUnit('mmHg')).toBe('mm[Hg]')
    expect(typedUnit('tablets')).toBe('{tablet}')
    expect(typedUnit('lb')).toBe('[lb_av]')
  })

  it('are not guessed for a letter that can mean two things', () => {
    expect(typedUnit('M')).toBeUndefined()
    expect(typedUnit('G')).toBeUndefined()
  })
})
