import { refuse } from '#core/outcome/outcome.ts'
import { convert } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'
import { maybe, oneOf, percent, positive } from './fields.ts'
import { gives, operation } from './operation.ts'
import { kilograms, kilogramsPerPound } from './pounds.ts'

const rates = [
  'mg/kg/h',
  'mg/kg/min',
  'ug/kg/h',
  'ug/kg/min',
  'mL/kg/h',
  'mL/kg/min',
  'mg/h',
  'ug/h',
  'mL/h',
  'mL/min',
] as const satisfies readonly Unit[]

export const conversion = {
  lb_to_kg: operation({
    fields: { weight_lb: positive('[lb_av]') },
    formula: 'kg = lb × 0.45359237 (exact)',
    units: ['kg'],
    run: (x) => gives(kilograms(x.weight_lb), 'kg'),
  }),
  kg_to_lb: operation({
    fields: { weight_kg: positive('kg') },
    formula: 'lb = kg ÷ 0.45359237 (exact)',
    units: ['[lb_av]'],
    run: (x) => gives(x.weight_kg.div(kilogramsPerPound), '[lb_av]'),
  }),
  mg_lb_to_mg_kg: operation({
    fields: { value: positive('mg/lb') },
    formula: 'mg/kg = mg/lb ÷ 0.45359237',
    units: ['mg/kg'],
    run: (x) => gives(x.value.div(kilogramsPerPound), 'mg/kg'),
  }),
  mg_kg_to_mg_lb: operation({
    fields: { value: positive('mg/kg, or per hour'), per: maybe(oneOf('h', 'dose')) },
    formula: 'mg/lb = mg/kg × 0.45359237; a rate per hour stays per hour',
    units: ['mg/lb', 'mg/lb/h'],
    run: (x) => gives(x.value.times(kilogramsPerPound), x.per === 'h' ? 'mg/lb/h' : 'mg/lb'),
  }),
  convert_rate: operation({
    fields: { value: positive('from'), from: oneOf(...rates), to: oneOf(...rates) },
    formula: 'the same rate in the other unit: 1 mg = 1000 ug, 1 h = 60 min',
    units: rates,
    run: (x) => {
      const converted = convert({ value: x.value, unit: x.from }, x.to)
      if (!converted) return refuse({ because: 'units-do-not-match', field: 'to', about: { one: x.from, other: x.to } })
      return gives(converted.value, x.to)
    },
  }),
  percent_strength: operation({
    fields: { percent: percent() },
    formula: 'mg/mL = % w/v × 10',
    units: ['mg/mL'],
    run: (x) => gives(x.percent.times(10), 'mg/mL'),
  }),
  ratio_strength: operation({
    fields: { one_in: positive('mL per gram') },
    formula: 'mg/mL = 1000 ÷ n for a strength written 1:n',
    units: ['mg/mL'],
    run: (x) => gives(x.one_in.pow(-1).times(1000), 'mg/mL'),
  }),
}
