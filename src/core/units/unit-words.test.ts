import { describe, expect, it } from 'vitest'
import { unitList } from './unit.ts'
import { spellUnits, typedUnit, unitWord } from './unit-words.ts'

describe('a sentence with units', () => {
  it('is spelled for people, each unit whole', () => {
    expect(spellUnits('55.2 ug of x is over 10 ug/kg/min, not 3 ug/kg; 0.5 ug/mL')).toBe(
      '55.2 microgram of x is over 10 microgram/kg/min, not 3 microgram/kg; 0.5 microgram/mL',
    )
    expect(spellUnits('0.8 [iU]/kg from 20 [iU]/mL: 6.4 [iU].')).toBe('0.8 units/kg from 20 units/mL: 6.4 units.')
    expect(spellUnits('2 %{vol}, 1 {tablet}, 5 mg/{animal}')).toBe('2 % by volume, 1 tablet, 5 mg for the animal')
    expect(spellUnits('a drug of 5 mg/kg, 125 ug/m2')).toBe('a drug of 5 mg/kg, 125 microgram/m²')
  })
})

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
