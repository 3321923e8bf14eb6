import { describe, expect, it } from 'vitest'
import { quantity } from '#core/units/quantity.ts'
import { countTablets, courseOf } from './tablets.ts'

const mg = (value: string) => quantity(value, 'mg')
const band = { low: mg('75'), high: mg('150') }
const count = (amount: string, strength: string, divides: 'whole' | 'halves' | 'quarters' | 'unknown', more = {}) => {
  const result = countTablets(mg(amount), mg(strength), divides, { ...band, ...more })
  return result.kind === 'none' ? 'none' : `${result.kind} ${result.count.value}`
}

describe('the number of tablets', () => {
  it('goes in pieces the product is known to allow', () => {
    expect(count('80', '50', 'halves')).toBe('fits 1.5')
    expect(count('80', '50', 'quarters')).toBe('fits 1.5')
    expect(count('88', '50', 'quarters')).toBe('fits 1.75')
    expect(count('87', '50', 'quarters')).toBe('fits 1.5')
    expect(count('80', '50', 'whole')).toBe('fits 2')
    expect(count('80', '50', 'unknown')).toBe('fits 2')
  })

  it('prefers a count inside the range to a nearer one outside it', () => {
    expect(count('76', '50', 'whole')).toBe('fits 2')
  })

  it('goes down while the label’s direction is not known and fewer are inside the range, else up into it', () => {
    expect(count('90', '50', 'halves')).toBe('fits 1.5')
    expect(count('98', '50', 'halves')).toBe('fits 1.5')
    expect(count('76', '50', 'whole')).toBe('fits 2')
    expect(count('40', '50', 'whole')).toBe('rounded 1')
    expect(count('60', '50', 'whole')).toBe('rounded 1')
  })

  it('is not lifted into the range when the dose itself was planned under it', () => {
    // Pradofloxacin planned at 1.95 mg/kg: 15.001 mg of 15 mg tablets are one, not two.
    const under = { low: mg('23'), high: mg('39') }
    expect(count('15.001', '15', 'whole', under)).toBe('rounded 1')
    expect(count('19.5', '15', 'whole', under)).toBe('rounded 1')
  })

  it('follows the label where it says a direction', () => {
    expect(count('98', '50', 'halves', { rounds: 'down' })).toBe('fits 1.5')
    expect(count('90', '50', 'halves', { rounds: 'up' })).toBe('fits 2')
    expect(count('100', '50', 'halves', { rounds: 'up' })).toBe('fits 2')
  })

  it('never passes the ceiling, and is none when every piece does', () => {
    expect(count('80', '50', 'whole', { ceiling: mg('90') })).toBe('rounded 1')
    expect(count('80', '250', 'whole', { ceiling: mg('90') })).toBe('none')
  })
})

describe('the tablets of a course', () => {
  const each = quantity('1.5', '{tablet}')
  it('are counted only when the interval is one number of hours', () => {
    expect(String(courseOf(each, { words: 'every 12 h', hours: ['12', '12'] }, 7))).toBe('21 {tablet}')
    expect(courseOf(each, { words: 'every 8 to 12 h', hours: ['8', '12'] }, 7)).toBeUndefined()
    expect(courseOf(each, { words: 'once' }, 7)).toBeUndefined()
    expect(courseOf(each, { words: 'every 12 h', hours: ['12', '12'] }, undefined)).toBeUndefined()
  })
})
