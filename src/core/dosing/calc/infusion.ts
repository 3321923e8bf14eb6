import { refuse } from '#core/outcome/outcome.ts'
import { convert, type Decimal } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'
import { maybe, oneOf, positive } from './fields.ts'
import { gives, operation } from './operation.ts'

const rateUnit = oneOf('mg/kg/h', 'mg/kg/min', 'ug/kg/h', 'ug/kg/min')
type RateUnit = 'mg/kg/h' | 'mg/kg/min' | 'ug/kg/h' | 'ug/kg/min'

function inUnit(value: Decimal, unit: Unit, wanted: Unit): Decimal {
  const converted = convert({ value, unit }, wanted)
  if (!converted) throw new Error(`${unit} cannot be written in ${wanted}.`)
  return converted.value
}

const mgPerKgPerHour = (dose: Decimal, unit: RateUnit) => inUnit(dose, unit, 'mg/kg/h')

/**
 * The two conventions for a drug added to a bag. `withdrawn`: as much fluid as drug was taken out first, the bag keeps
 * its volume (the published recipes read here calculate so, also where the volume was simply neglected).
 * `added`: the drug comes on top and the bag grows by it.
 */
const ownVolume = maybe(oneOf('withdrawn', 'added'))

export const infusion = {
  cri_rate_per_kg: operation({
    fields: { volume_mL: positive('mL'), weight_kg: positive('kg'), hours: positive('h') },
    formula: 'mL/kg/h = mL ÷ h ÷ kg',
    units: ['mL/kg/h'],
    run: (x) => gives(x.volume_mL.div(x.hours).div(x.weight_kg), 'mL/kg/h'),
  }),
  rate_total: operation({
    fields: { rate_mL_kg_h: positive('mL/kg/h'), weight_kg: positive('kg') },
    formula: 'mL/h = mL/kg/h × kg',
    units: ['mL/h'],
    run: (x) => gives(x.rate_mL_kg_h.times(x.weight_kg), 'mL/h'),
  }),
  cri_pump_rate: operation({
    fields: {
      dose: positive('dose_unit'),
      dose_unit: rateUnit,
      weight_kg: positive('kg'),
      stock: positive('stock_unit'),
      stock_unit: oneOf('mg/mL', 'ug/mL', 'g/L'),
    },
    formula: 'mL/h = dose (mg/kg/h) × kg ÷ strength (mg/mL)',
    units: ['mL/h'],
    run: (x) =>
      gives(
        mgPerKgPerHour(x.dose, x.dose_unit)
          .times(x.weight_kg)
          .div(inUnit(x.stock, x.stock_unit, 'mg/mL')),
        'mL/h',
      ),
  }),
  cri_mass_per_hour: operation({
    fields: { dose: positive('dose_unit'), dose_unit: rateUnit, weight_kg: positive('kg') },
    formula: 'mg for one hour = dose (mg/kg/h) × kg',
    units: ['mg'],
    run: (x) => gives(mgPerKgPerHour(x.dose, x.dose_unit).times(x.weight_kg), 'mg'),
  }),
  cri_mass_for_hours: operation({
    fields: { dose: positive('dose_unit'), dose_unit: rateUnit, weight_kg: positive('kg'), hours: positive('h') },
    formula: 'mg = dose (mg/kg/h) × kg × h; for six hours of a dose in ug/kg/min this is kg × dose × 0.36',
    units: ['mg'],
    run: (x) => gives(mgPerKgPerHour(x.dose, x.dose_unit).times(x.weight_kg).times(x.hours), 'mg'),
  }),
  cri_mass_in_volume: operation({
    fields: {
      dose: positive('dose_unit'),
      dose_unit: rateUnit,
      rate_mL_kg_h: positive('mL/kg/h'),
      volume_mL: positive('mL'),
    },
    formula: 'mg to add = dose (mg/kg/h) ÷ rate (mL/kg/h) × final volume (mL); the weight cancels',
    units: ['mg'],
    run: (x) => gives(mgPerKgPerHour(x.dose, x.dose_unit).div(x.rate_mL_kg_h).times(x.volume_mL), 'mg'),
  }),
  cri_mass_to_add: operation({
    fields: {
      dose: positive('dose_unit'),
      dose_unit: rateUnit,
      weight_kg: positive('kg'),
      volume_mL: positive('mL'),
      rate_mL_h: positive('mL/h'),
    },
    formula: 'mg to add = dose (mg/kg/h) × kg × final volume (mL) ÷ rate (mL/h)',
    units: ['mg'],
    run: (x) => gives(mgPerKgPerHour(x.dose, x.dose_unit).times(x.weight_kg).times(x.volume_mL).div(x.rate_mL_h), 'mg'),
  }),
  cri_delivered_dose: operation({
    fields: {
      stock_mg_mL: positive('mg/mL'),
      added_mL: positive('mL'),
      bag_mL: positive('mL'),
      rate_mL_kg_h: positive('mL/kg/h'),
      own_volume: ownVolume,
    },
    formula:
      'mg/kg/h = stock (mg/mL) × added (mL) ÷ bag (mL) × rate (mL/kg/h); the bag keeps its volume: as much fluid as drug was withdrawn first, or the difference is neglected',
    units: ['mg/kg/h'],
    run: (x) => {
      const mass = x.stock_mg_mL.times(x.added_mL)
      if (x.own_volume !== 'added') return gives(mass.div(x.bag_mL).times(x.rate_mL_kg_h), 'mg/kg/h')
      return gives(mass.div(x.bag_mL.plus(x.added_mL)).times(x.rate_mL_kg_h), 'mg/kg/h', {
        formula:
          'mg/kg/h = stock (mg/mL) × added (mL) ÷ (bag + added) (mL) × rate (mL/kg/h); the drug was added to a full bag, nothing withdrawn',
      })
    },
  }),
  dilution_volume: operation({
    fields: {
      stock_mg_mL: positive('mg/mL'),
      target_mg_mL: positive('mg/mL'),
      bag_mL: positive('mL'),
      own_volume: ownVolume,
    },
    formula:
      'mL of drug = target (mg/mL) × bag (mL) ÷ stock (mg/mL); withdraw as much fluid first, the bag keeps its volume',
    units: ['mL'],
    run: (x) => {
      if (x.target_mg_mL.gt(x.stock_mg_mL) || (x.own_volume === 'added' && x.target_mg_mL.eq(x.stock_mg_mL))) {
        return refuse({
          because: 'target-above-stock',
          field: 'target_mg_mL',
          about: { target: x.target_mg_mL.toFixed(), stock: x.stock_mg_mL.toFixed() },
        })
      }
      if (x.own_volume !== 'added') return gives(x.target_mg_mL.times(x.bag_mL).div(x.stock_mg_mL), 'mL')
      return gives(x.target_mg_mL.times(x.bag_mL).div(x.stock_mg_mL.minus(x.target_mg_mL)), 'mL', {
        formula: 'mL of drug = target × bag ÷ (stock − target); added to a full bag, nothing withdrawn',
      })
    },
  }),
  strength_after_dilution: operation({
    fields: { stock_mg_mL: positive('mg/mL'), drug_mL: positive('mL'), diluent_mL: positive('mL') },
    formula: 'mg/mL = stock (mg/mL) × drug (mL) ÷ (drug + diluent) (mL)',
    units: ['mg/mL'],
    run: (x) => gives(x.stock_mg_mL.times(x.drug_mL).div(x.drug_mL.plus(x.diluent_mL)), 'mg/mL'),
  }),
  syringe_life: operation({
    fields: { volume_mL: positive('mL'), rate_mL_h: positive('mL/h') },
    formula: 'h = mL ÷ mL/h',
    units: ['h'],
    run: (x) => gives(x.volume_mL.div(x.rate_mL_h), 'h'),
  }),
  infusion_total: operation({
    fields: {
      rate: positive('rate_unit'),
      rate_unit: oneOf('mL/kg/min', 'mL/kg/h', 'mL/min', 'mL/h', 'mg/kg/min', 'mg/kg/h', 'ug/kg/min', 'ug/kg/h'),
      minutes: positive('min'),
    },
    formula: 'total = rate × time; a rate per hour is divided by 60 for each minute',
    units: ['mL/kg', 'mL', 'mg/kg', 'ug/kg'],
    run: (x) => {
      const [total, perHour] = x.rate_unit.endsWith('/h')
        ? [x.rate_unit.slice(0, -'/h'.length), true]
        : [x.rate_unit.slice(0, -'/min'.length), false]
      const sum = x.rate.times(x.minutes)
      return gives(perHour ? sum.div(60) : sum, total)
    },
  }),
}
