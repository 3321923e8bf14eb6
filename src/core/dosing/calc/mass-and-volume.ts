import { refuse } from '#core/outcome/outcome.ts'
import { convert, Decimal, Quantity } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'
import { drawnFrom } from '../syringe.ts'
import { maybe, oneOf, positive } from './fields.ts'
import { type CalcOutcome, gives, operation } from './operation.ts'
import { kilograms } from './pounds.ts'

const doseUnit = oneOf('mg/kg', 'ug/kg', 'g/kg')
type DoseUnit = 'mg/kg' | 'ug/kg' | 'g/kg'

/** A dose by weight in mg per kg, whatever mass it was written in. */
export function mgPerKg(dose: Decimal, unit: DoseUnit): Decimal {
  const converted = convert({ value: dose, unit }, 'mg/kg')
  if (!converted) throw new Error(`${unit} is not a mass per body weight.`)
  return converted.value
}

/** To the nearest graduation, halves away from zero. */
function toNearest(value: Decimal, mark: Decimal | undefined): Decimal {
  return mark ? value.div(mark).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).times(mark) : value
}

type Measured = { readonly value: Decimal; readonly unit: Unit }
const bySubstance = [
  { perKg: 'mg/kg', strength: 'mg/mL' },
  { perKg: '[iU]/kg', strength: '[iU]/mL' },
  { perKg: 'mmol/kg', strength: 'mmol/mL' },
] as const

/** Dose × weight ÷ strength, for any two units that count the same thing: mass, activity or substance. */
function volumeInAnyUnit(dose: Measured, weight: Decimal, stock: Measured): CalcOutcome {
  for (const { perKg, strength } of bySubstance) {
    const inDose = convert(dose, perKg)
    const inStock = convert(stock, strength)
    if (inDose && inStock) return gives(inDose.value.times(weight).div(inStock.value), 'mL')
  }
  return refuse({ because: 'units-do-not-match', field: 'stock_unit', about: { one: dose.unit, other: stock.unit } })
}

export const massAndVolume = {
  dose_mass: operation({
    fields: { dose: positive('dose_unit'), dose_unit: doseUnit, weight_kg: positive('kg') },
    formula: 'mg = dose (mg/kg) × weight (kg)',
    units: ['mg'],
    run: (x) => gives(mgPerKg(x.dose, x.dose_unit).times(x.weight_kg), 'mg'),
  }),
  dose_mass_lb: operation({
    fields: { dose: positive('dose_unit'), dose_unit: doseUnit, weight_lb: positive('[lb_av]') },
    formula: 'mg = dose (mg/kg) × weight (lb) × 0.45359237',
    units: ['mg'],
    run: (x) => gives(mgPerKg(x.dose, x.dose_unit).times(kilograms(x.weight_lb)), 'mg'),
  }),
  bolus_volume: operation({
    fields: {
      dose: positive('dose_unit'),
      dose_unit: doseUnit,
      weight_kg: positive('kg'),
      stock_mg_mL: positive('mg/mL'),
      round_to_mL: maybe(positive('mL')),
    },
    formula: 'mL = dose (mg/kg) × weight (kg) ÷ stock (mg/mL), to the nearest round_to_mL when that is given',
    units: ['mL'],
    run: (x) =>
      gives(toNearest(mgPerKg(x.dose, x.dose_unit).times(x.weight_kg).div(x.stock_mg_mL), x.round_to_mL), 'mL'),
  }),
  bolus_volume_lb: operation({
    fields: {
      dose: positive('dose_unit'),
      dose_unit: doseUnit,
      weight_lb: positive('[lb_av]'),
      stock_mg_mL: positive('mg/mL'),
    },
    formula: 'mL = dose (mg/kg) × weight (lb) × 0.45359237 ÷ stock (mg/mL)',
    units: ['mL'],
    run: (x) => gives(mgPerKg(x.dose, x.dose_unit).times(kilograms(x.weight_lb)).div(x.stock_mg_mL), 'mL'),
  }),
  bolus_volume_per_lb: operation({
    fields: {
      dose: positive('mg/lb'),
      dose_unit: oneOf('mg/lb'),
      weight_lb: positive('[lb_av]'),
      stock_mg_mL: positive('mg/mL'),
    },
    formula: 'mL = dose (mg/lb) × weight (lb) ÷ stock (mg/mL)',
    units: ['mL'],
    run: (x) => gives(x.dose.times(x.weight_lb).div(x.stock_mg_mL), 'mL'),
  }),
  bolus_volume_generic: operation({
    fields: {
      dose: positive('dose_unit'),
      dose_unit: oneOf('mg/kg', 'ug/kg', 'g/kg', '[iU]/kg', 'mmol/kg'),
      weight_kg: positive('kg'),
      stock: positive('stock_unit'),
      stock_unit: oneOf('mg/mL', 'ug/mL', 'g/L', '[iU]/mL', 'mmol/mL'),
    },
    formula: 'mL = dose (per kg) × weight (kg) ÷ stock (per mL), both in the same unit',
    units: ['mL'],
    run: (x) =>
      volumeInAnyUnit({ value: x.dose, unit: x.dose_unit }, x.weight_kg, { value: x.stock, unit: x.stock_unit }),
  }),
  volume_from_mass: operation({
    fields: { mass_mg: positive('mg'), stock_mg_mL: positive('mg/mL') },
    formula: 'mL = mg ÷ stock (mg/mL)',
    units: ['mL'],
    run: (x) => gives(x.mass_mg.div(x.stock_mg_mL), 'mL'),
  }),
  mass_from_volume: operation({
    fields: { volume_mL: positive('mL'), stock_mg_mL: positive('mg/mL') },
    formula: 'mg = mL × stock (mg/mL)',
    units: ['mg'],
    run: (x) => gives(x.volume_mL.times(x.stock_mg_mL), 'mg'),
  }),
  delivered_dose: operation({
    fields: { volume_mL: positive('mL'), stock_mg_mL: positive('mg/mL'), weight_kg: positive('kg') },
    formula: 'mg/kg = drawn volume (mL) × stock (mg/mL) ÷ weight (kg)',
    units: ['mg/kg'],
    run: (x) => gives(x.volume_mL.times(x.stock_mg_mL).div(x.weight_kg), 'mg/kg'),
  }),
  drawn_volume: operation({
    fields: { volume_mL: positive('mL') },
    formula:
      'mL to the nearest mark of the smallest syringe that holds it (to 1: 0.01, 3: 0.1, 5: 0.2, 10: 0.5, more: 1)',
    units: ['mL'],
    run: (x) => gives(drawnFrom(new Quantity(x.volume_mL, 'mL')).value, 'mL'),
  }),
  local_anaesthetic_share: operation({
    fields: { given_mg: positive('mg'), limit_mg_kg: positive('mg/kg'), weight_kg: positive('kg') },
    formula:
      'share of the ceiling = given (mg) ÷ (limit (mg/kg) × kg); the shares of all drugs and sites are added, and 1 is full',
    units: ['1'],
    run: (x) => gives(x.given_mg.div(x.limit_mg_kg.times(x.weight_kg)), '1'),
  }),
}
