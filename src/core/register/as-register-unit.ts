import type { BodyOf } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { type AnyQuantity, convert, type Decimal } from '#core/units/quantity.ts'

type Strength = BodyOf<'register-line'>['strength']
type Amount = BodyOf<'drug-given'>['amount']
export type RegisterUnit = BodyOf<'register-line'>['amount']['unit']

/** What a register of this strength is counted in. */
export function registerUnit(strength: Strength): RegisterUnit {
  return strength.unit === 'mg/{tablet}' ? '{tablet}' : 'mL'
}

/** The mass in one of what is counted; a percentage is never read as one. */
const massOf = { 'mg/mL': 'mg', 'ug/mL': 'ug', '[iU]/mL': '[iU]', 'mg/{tablet}': 'mg', 'mmol/mL': 'mmol' } as const

/**
 * An amount in what the register is counted in; undefined when the strength does not settle it.
 *
 * @example inRegisterUnit({ value: '5.5', unit: 'mg' }, { value: '10', unit: 'mg/mL' })?.toFixed() // '0.55'
 */
export function inRegisterUnit(amount: Amount, strength: Strength): Decimal | undefined {
  const given = fromStored(amount) as unknown as AnyQuantity
  if (given.unit === registerUnit(strength)) return given.value
  const mass = strength.unit === '%' ? undefined : convert(given, massOf[strength.unit])
  const per = fromStored(strength).value
  return mass && !per.isZero() ? mass.value.div(per) : undefined
}
