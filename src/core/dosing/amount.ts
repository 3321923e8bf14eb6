import type { Dose } from '#core/formulary/drug.ts'
import { never } from '#core/outcome/outcome.ts'
import { type AnyQuantity, Decimal, Quantity, times } from '#core/units/quantity.ts'

/** What a dose is multiplied with. */
export type Body = { readonly weight: Quantity<'kg'>; readonly surface: Quantity<'m2'> }

/** What a dose is counted per; `flat` needs no weight. */
export type DoseKind = 'per-weight' | 'per-surface' | 'flat' | 'infusion-per-weight' | 'infusion-flat'

export function kindOf(dose: Dose): DoseKind {
  switch (dose.unit) {
    case 'mg/kg':
    case 'ug/kg':
    case 'g/kg':
    case 'mL/kg':
    case '[iU]/kg':
    case 'mmol/kg':
      return 'per-weight'
    case 'mg/m2':
    case 'ug/m2':
      return 'per-surface'
    case 'mg/kg/min':
    case 'mg/kg/h':
    case 'ug/kg/min':
    case 'ug/kg/h':
    case 'mL/kg/min':
    case 'mL/kg/h':
    case 'mmol/kg/h':
      return 'infusion-per-weight'
    case 'ug/h':
      return 'infusion-flat'
    case 'mg/{animal}':
    case 'cm/{eye}':
    case '[drp]/{eye}':
    case '%{vol}':
      return 'flat'
    default:
      return never(dose)
  }
}

/**
 * The amount of one dose. Infusions come out per hour; a dose per eye or a vaporiser setting is its own amount.
 *
 * @example amountOf(quantity('1', 'mg/kg'), { weight: quantity('8.2', 'kg'), surface }) // 8.2 mg
 */
export function amountOf(dose: Dose, body: Body): AnyQuantity {
  const { weight, surface } = body
  switch (dose.unit) {
    case 'mg/kg':
      return times(dose, weight, 'mg')
    case 'ug/kg':
      return times(dose, weight, 'ug')
    case 'g/kg':
      return times(dose, weight, 'g')
    case 'mL/kg':
      return times(dose, weight, 'mL')
    case '[iU]/kg':
      return times(dose, weight, '[iU]')
    case 'mmol/kg':
      return times(dose, weight, 'mmol')
    case 'mg/m2':
      return times(dose, surface, 'mg')
    case 'ug/m2':
      return times(dose, surface, 'ug')
    case 'mg/{animal}':
      return new Quantity(dose.value, 'mg')
    case 'mg/kg/min':
      return new Quantity(dose.value.times(weight.value).times(60), 'mg/h')
    case 'mg/kg/h':
      return new Quantity(dose.value.times(weight.value), 'mg/h')
    case 'ug/kg/min':
      return new Quantity(dose.value.times(weight.value).times(60), 'ug/h')
    case 'ug/kg/h':
      return new Quantity(dose.value.times(weight.value), 'ug/h')
    case 'mL/kg/min':
      return new Quantity(dose.value.times(weight.value).times(60), 'mL/h')
    case 'mL/kg/h':
      return new Quantity(dose.value.times(weight.value), 'mL/h')
    case 'mmol/kg/h':
      return new Quantity(dose.value.times(weight.value), 'mmol/h')
    case 'ug/h':
    case 'cm/{eye}':
    case '[drp]/{eye}':
    case '%{vol}':
      return dose
    default:
      return never(dose)
  }
}

/**
 * The dose that an amount really gives this animal, in the unit of the planned dose: the amount's share of the
 * planned amount, times the planned dose.
 *
 * @example deliveredBy(quantity('8', 'mg'), quantity('8.2', 'mg'), quantity('1', 'mg/kg')) // 0.9756… mg/kg
 */
export function deliveredBy<U extends AnyQuantity['unit']>(given: Quantity<U>, planned: Quantity<U>, dose: Dose): Dose {
  return new Quantity(dose.value.times(given.value).div(planned.value), dose.unit) as Dose
}

/** Body surface in m²: factor × kg^(2/3) (Meeh's form). Example: 8.2 kg, dog, 0.101 → 0.4107 m². */
export function bodySurface(weight: Quantity<'kg'>, factor: Decimal | string): Quantity<'m2'> {
  return new Quantity(new Decimal(factor).times(weight.value.pow(2).cbrt()), 'm2')
}
