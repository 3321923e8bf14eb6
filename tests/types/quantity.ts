import { add, divide, per, type Quantity, quantity, times } from '#core/units/quantity.ts'

/** Compile-time checks: every line below must be refused by the compiler, and the type check fails when one is not. */
export function mustNotCompile(
  mg: Quantity<'mg'>,
  mL: Quantity<'mL'>,
  kg: Quantity<'kg'>,
  strength: Quantity<'mg/mL'>,
) {
  // @ts-expect-error mg and mL cannot be added
  add(mg, mL)
  // @ts-expect-error a rate is not a weight
  times(quantity('1', 'mg/kg'), quantity('1', 'mg/kg'), 'mg')
  // @ts-expect-error a bare number is not a quantity
  add(mg, 3)
  // @ts-expect-error volume divided by strength is not a volume
  divide(mL, strength, 'mL')
  // @ts-expect-error mg per kg is not mg per mL
  per(mg, kg, 'mg/mL')
  // @ts-expect-error a union of units is not accepted where one unit is wanted
  const widened: Quantity<'mg' | 'mL'> = mg
  return widened
}
