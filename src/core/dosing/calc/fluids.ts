import { Decimal } from '#core/units/quantity.ts'
import { amount, count, maybe, part, percent, positive } from './fields.ts'
import { gives, operation } from './operation.ts'
import { kilogramsPerPound } from './pounds.ts'

/** Deficit: one per cent of body weight is 10 mL per kg. */
const deficitOf = (percentLost: Decimal, weight: Decimal) => weight.times(percentLost).times(10)

export const fluids = {
  daily_volume: operation({
    fields: { mL_kg_day: positive('mL/kg/d'), weight_kg: positive('kg') },
    formula: 'mL/d = mL/kg/d × kg',
    units: ['mL/d'],
    run: (x) => gives(x.mL_kg_day.times(x.weight_kg), 'mL/d'),
  }),
  per_hour: operation({
    fields: { mL_day: positive('mL/d') },
    formula: 'mL/h = mL/d ÷ 24',
    units: ['mL/h'],
    run: (x) => gives(x.mL_day.div(24), 'mL/h'),
  }),
  hourly_from_daily_lb: operation({
    fields: { mL_lb_day: positive('mL/lb/d'), weight_lb: positive('[lb_av]') },
    formula: 'mL/h = mL/lb/d × lb ÷ 24',
    units: ['mL/h'],
    run: (x) => gives(x.mL_lb_day.times(x.weight_lb).div(24), 'mL/h'),
  }),
  deficit: operation({
    fields: { percent: percent(), weight_kg: positive('kg') },
    formula: 'mL = kg × % × 10',
    units: ['mL'],
    run: (x) => gives(deficitOf(x.percent, x.weight_kg), 'mL'),
  }),
  total_fluid: operation({
    fields: {
      percent: amount('%'),
      weight_kg: positive('kg'),
      mL_kg_day: positive('mL/kg/d'),
      extra_mL: maybe(amount('mL')),
    },
    formula: 'mL/d = deficit (kg × % × 10) + maintenance (mL/kg/d × kg) + continuing losses (mL), over 24 h',
    units: ['mL/d'],
    run: (x) =>
      gives(
        deficitOf(x.percent, x.weight_kg)
          .plus(x.mL_kg_day.times(x.weight_kg))
          .plus(x.extra_mL ?? 0),
        'mL/d',
      ),
  }),
  anaesthetic_rate_hour: operation({
    fields: {
      start_mL_kg_h: positive('mL/kg/h'),
      cut_fraction: part(),
      hour: count('hour of anaesthesia, the first is 1'),
      weight_kg: positive('kg'),
      floor_mL_kg_h: maybe(amount('mL/kg/h')),
    },
    formula:
      'mL/h = start (mL/kg/h) × (1 − cut)^(hour − 1) × kg; each cut is taken from the hour before, never below floor_mL_kg_h when that is given',
    units: ['mL/h'],
    run: (x) => {
      const left = new Decimal(1).minus(x.cut_fraction).pow(x.hour.minus(1))
      return gives(Decimal.max(x.start_mL_kg_h.times(left), x.floor_mL_kg_h ?? 0).times(x.weight_kg), 'mL/h')
    },
  }),
  allometric_daily: operation({
    fields: { k: positive('mL/d per kg^0.75'), weight_kg: positive('kg') },
    formula: 'mL/d = k × kg^0.75 (k 132 dog, 80 cat in the guideline named)',
    units: ['mL/d'],
    run: (x) => gives(x.k.times(x.weight_kg.pow('0.75')), 'mL/d'),
  }),
  drops_per_min: operation({
    fields: { drops_per_mL: positive('[drp]/mL'), rate_mL_kg_h: positive('mL/kg/h'), weight_kg: positive('kg') },
    formula: 'drops/min = drops per mL × mL/kg/h × kg ÷ 60',
    units: ['/min'],
    run: (x) => gives(x.drops_per_mL.times(x.rate_mL_kg_h).times(x.weight_kg).div(60), '/min'),
  }),
  drops_per_min_rate: operation({
    fields: { drops_per_mL: positive('[drp]/mL'), rate_mL_h: positive('mL/h') },
    formula: 'drops/min = drops per mL × mL/h ÷ 60',
    units: ['/min'],
    run: (x) => gives(x.drops_per_mL.times(x.rate_mL_h).div(60), '/min'),
  }),
  per_kg_from_per_lb_day: operation({
    fields: { mL_lb_day: positive('mL/lb/d') },
    formula: 'mL/kg/d = mL/lb/d ÷ 0.45359237',
    units: ['mL/kg/d'],
    run: (x) => gives(x.mL_lb_day.div(kilogramsPerPound), 'mL/kg/d'),
  }),
}
