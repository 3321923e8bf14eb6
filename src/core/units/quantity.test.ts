import { describe, expect, it } from 'vitest'
import { add, convert, divide, type Quantity, quantity, readQuantity, times } from './quantity.ts'

describe('a quantity', () => {
  it('multiplies a rate by its denominator', () => {
    expect(times(quantity('2', 'mg/kg'), quantity('8.2', 'kg'), 'mg').toString()).toBe('16.4 mg')
  })

  it('divides an amount by a strength', () => {
    expect(divide(quantity('16.4', 'mg'), quantity('5', 'mg/mL'), 'mL').toString()).toBe('3.28 mL')
  })

  it('adds decimals exactly, where floating point would not', () => {
    expect(add(quantity('0.1', 'mL'), quantity('0.2', 'mL')).toString()).toBe('0.3 mL')
  })

  it('holds the international pound exactly (0.45359237 kg)', () => {
    expect(convert(quantity('1', '[lb_av]'), 'kg')?.toString()).toBe('0.45359237 kg')
    expect(convert(quantity('27', '[lb_av]'), 'kg')?.toString()).toBe('12.24699399 kg')
  })

  it('does not convert between dimensions', () => {
    expect(convert(quantity('1', 'mg'), 'mL')).toBeUndefined()
  })

  it('checks the unit at run time even when the types were silenced', () => {
    const smuggled = quantity('1', 'mL') as unknown as Quantity<'mg'>
    expect(() => add(quantity('1', 'mg'), smuggled)).toThrow('Expected a quantity in mg, got mL.')
  })

  it('is never made from text with an exponent, a comma or nothing', () => {
    for (const text of ['1e3', '1,5', '', ' 1', 'NaN', 'Infinity', '.5']) {
      expect(() => quantity(text, 'kg')).toThrow('is not a plain decimal')
    }
  })

  it('writes decimals without exponent and without trailing zeros', () => {
    expect(JSON.stringify(quantity('0.0000001000', 'mg'))).toBe('{"value":"0.0000001","unit":"mg"}')
  })

  it('is read from what programs send, refusing a bare number and suggesting a unit', () => {
    expect(String(readQuantity({ value: 12.5, unit: 'kg' }))).toBe('12.5 kg')
    expect(readQuantity(12.5)).toEqual({ because: 'bare-number', given: '12.5' })
    expect(readQuantity({ value: 27, unit: 'lb' })).toEqual({
      because: 'unknown-unit',
      given: 'lb',
      suggestion: '[lb_av]',
    })
  })
})
