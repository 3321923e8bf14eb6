import { expect, it } from 'vitest'
import { quantity } from '#core/units/quantity.ts'
import { shelfBeside } from './shelf-beside.ts'

/** Every strength here is invented. */
const row = { drug: 'exampline', stock: quantity('0.5', 'mg/mL') }
const item = {
  drug: 'exampline',
  label: 'Exampline 0.6',
  strength: { value: '0.6', unit: 'mg/mL' },
  outSince: null,
} as const

it('A shelf that has only another strength says so, because the volume would be wrong', () => {
  expect(shelfBeside(row, [item])).toEqual({ kind: 'other-strength', labels: ['Exampline 0.6'] })
  expect(shelfBeside(row, [item, { ...item, strength: { value: '500', unit: 'ug/mL' } }]).kind).toBe('there')
  expect(shelfBeside(row, [{ ...item, strength: null }]).kind).toBe('other-strength')
})

it('What is not on the shelf, or out of stock, is not there', () => {
  expect(shelfBeside(row, []).kind).toBe('not-there')
  const own = { ...item, strength: { value: '0.5', unit: 'mg/mL' } } as const
  expect(shelfBeside(row, [{ ...own, outSince: '2026-03-01' }]).kind).toBe('not-there')
  expect(shelfBeside({ ...row, stock: null }, [item]).kind).toBe('there')
})
