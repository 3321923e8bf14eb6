import { describe, expect, it } from 'vitest'
import type { Stock } from '#core/formulary/drug.ts'
import { type AnyQuantity, quantity } from '#core/units/quantity.ts'
import { heldBy, volumeOf, weakerDilution } from './volume.ts'

describe('a volume', () => {
  it.each([
    [quantity('16.4', 'mg'), quantity('5', 'mg/mL'), '3.28 mL'],
    [quantity('41', 'ug'), quantity('0.5', 'mg/mL'), '0.082 mL'],
    [quantity('0.041', 'mg'), quantity('50', 'ug/mL'), '0.82 mL'],
    [quantity('16.4', 'mg'), quantity('5', 'g/L'), '3.28 mL'],
  ] as [AnyQuantity, Stock, string][])('of %s at %s is %s', (amount, strength, expected) => {
    expect(String(volumeOf(amount, strength))).toBe(expected)
  })

  it('cannot be told when the strength is of another kind', () => {
    expect(volumeOf(quantity('1', 'mmol'), quantity('5', 'mg/mL'))).toBeUndefined()
  })

  it('holds again what it was taken from', () => {
    expect(String(heldBy(quantity('3.28', 'mL'), quantity('5', 'g/L'), 'mg'))).toBe('16.4 mg')
    expect(String(heldBy(quantity('0.082', 'mL'), quantity('0.5', 'mg/mL'), 'ug'))).toBe('41 ug')
  })
})

describe('a weaker dilution', () => {
  it('is the first that can be drawn', () => {
    expect(weakerDilution(quantity('4', 'ug'), quantity('0.5', 'mg/mL'), [10, 100])?.parts).toBe(10)
    expect(weakerDilution(quantity('0.4', 'ug'), quantity('0.5', 'mg/mL'), [10, 100])?.parts).toBe(100)
    expect(weakerDilution(quantity('0.04', 'ug'), quantity('0.5', 'mg/mL'), [10, 100])).toBeUndefined()
  })
})
