import { refuse } from '#core/outcome/outcome.ts'
import { Decimal } from '#core/units/quantity.ts'
import { oneOf, positive } from './fields.ts'
import { gives, operation } from './operation.ts'

export const measures = {
  energy: operation({
    fields: { dose: positive('J/kg'), dose_unit: oneOf('J/kg'), weight_kg: positive('kg') },
    formula: 'J = J/kg × kg',
    units: ['J'],
    run: (x) => gives(x.dose.times(x.weight_kg), 'J'),
  }),
  map: operation({
    fields: { sap: positive('mm[Hg]'), dap: positive('mm[Hg]') },
    formula: 'mean = diastolic + (systolic − diastolic) ÷ 3',
    units: ['mm[Hg]'],
    run: (x) => {
      if (x.dap.gt(x.sap)) {
        const about = { field: 'dap', value: x.dap.toFixed(), than: x.sap.toFixed() }
        return refuse({ because: 'wrong-order', field: 'dap', about })
      }
      return gives(x.dap.plus(x.sap.minus(x.dap).div(3)), 'mm[Hg]')
    },
  }),
  ideal_weight: operation({
    fields: { weight_kg: positive('kg'), body_condition_of_9: positive('1 to 9') },
    formula: 'kg = weight ÷ (1 + 0.1 × (score − 5)), for scores above 5 of 9; otherwise the weight itself',
    units: ['kg'],
    run: (x) => {
      const above = Decimal.max(x.body_condition_of_9.minus(5), 0)
      return gives(x.weight_kg.div(above.times('0.1').plus(1)), 'kg')
    },
  }),
}
