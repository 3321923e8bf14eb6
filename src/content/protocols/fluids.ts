import type { FluidRules } from '#core/dosing/rules.ts'
import { Decimal, quantity } from '#core/units/quantity.ts'

const guideline = {
  sources: ['aaha-aafp-2013-fluids'],
  known: 'read',
  strength: 'guideline',
  confidence: 'high',
  checked: '2026-11-29',
} as const

const rates = { ...guideline, where: 'anaesthetic-rate table' } as const
const maintenance = { ...guideline, where: 'maintenance for 24 h by metabolic weight' } as const
const power = new Decimal('0.75')

/** How much fluid runs, by species. */
export const fluids: FluidRules = {
  start: {
    dog: { value: quantity('5', 'mL/kg/h'), ...rates },
    cat: { value: quantity('3', 'mL/kg/h'), ...rates },
  },
  cut: { value: new Decimal('0.25'), ...rates, where: 'a quarter less each hour, down to maintenance, if stable' },
  most: { value: quantity('10', 'mL/kg/h'), ...rates },
  maintenance: {
    dog: { value: { factor: new Decimal(132), power }, ...maintenance },
    cat: { value: { factor: new Decimal(80), power }, ...maintenance },
  },
  deficit: {
    value: quantity('10', 'mL/kg'),
    ...guideline,
    sources: ['aaha-aafp-2013-fluids', 'vnj-2026-fluids'],
    where: 'page 9 of the guidelines; fluid boxes of the second',
  },
}
