import { refuse } from '#core/outcome/outcome.ts'
import type { Decimal } from '#core/units/quantity.ts'
import { amount, part, percent, positive } from './fields.ts'
import { type CalcOutcome, gives, operation } from './operation.ts'

/** A volume that must not be negative: a negative loss means that a weight or a volume was read wrongly. */
function lossOf(value: Decimal, field: string): CalcOutcome {
  if (value.lt(0)) return refuse({ because: 'result-negative', field, about: { result: `${value.toFixed()} mL` } })
  return gives(value, 'mL')
}

const wrongOrder = (field: string, lower: Decimal, higher: Decimal) =>
  refuse({ because: 'wrong-order', field, about: { field, value: lower.toFixed(), than: higher.toFixed() } })

const haematocrits = { ebv_mL: positive('mL'), hct_start: percent(), hct_min: percent() }

export const blood = {
  blood_volume: operation({
    fields: { mL_kg: positive('mL/kg'), weight_kg: positive('kg') },
    formula: 'mL = mL/kg × kg; lean weight in the obese',
    units: ['mL'],
    run: (x) => gives(x.mL_kg.times(x.weight_kg), 'mL'),
  }),
  fraction: operation({
    fields: { value: amount('mL'), fraction: part() },
    formula: 'mL = volume (mL) × fraction',
    units: ['mL'],
    run: (x) => gives(x.value.times(x.fraction), 'mL'),
  }),
  loss_percent: operation({
    fields: { loss_mL: amount('mL'), ebv_mL: positive('mL') },
    formula: '% = loss (mL) ÷ blood volume (mL) × 100',
    units: ['%'],
    run: (x) => gives(x.loss_mL.div(x.ebv_mL).times(100), '%'),
  }),
  allowable_blood_loss: operation({
    fields: haematocrits,
    formula: 'mL = blood volume × (start − lowest) ÷ start haematocrit; divided by the starting value',
    units: ['mL'],
    run: (x) =>
      x.hct_min.gt(x.hct_start)
        ? wrongOrder('hct_min', x.hct_min, x.hct_start)
        : gives(x.ebv_mL.times(x.hct_start.minus(x.hct_min)).div(x.hct_start), 'mL'),
  }),
  allowable_blood_loss_mean: operation({
    fields: haematocrits,
    formula: 'mL = blood volume × (start − lowest) ÷ mean of start and lowest haematocrit; divided by the mean',
    units: ['mL'],
    run: (x) =>
      x.hct_min.gt(x.hct_start)
        ? wrongOrder('hct_min', x.hct_min, x.hct_start)
        : gives(x.ebv_mL.times(x.hct_start.minus(x.hct_min)).div(x.hct_start.plus(x.hct_min).div(2)), 'mL'),
  }),
  swab_loss: operation({
    fields: { dry_g: amount('g'), wet_g: amount('g'), saline_mL: amount('mL'), g_per_mL: positive('g/mL') },
    formula: 'mL = (wet − dry) (g) ÷ g_per_mL − saline on the swab (mL)',
    units: ['mL'],
    run: (x) => lossOf(x.wet_g.minus(x.dry_g).div(x.g_per_mL).minus(x.saline_mL), 'wet_g'),
  }),
  suction_loss: operation({
    fields: { suction_mL: amount('mL'), lavage_mL: amount('mL') },
    formula: 'mL = jar (mL) − lavage recovered in the jar (mL); lavage that was not recovered is not subtracted',
    units: ['mL'],
    run: (x) => lossOf(x.suction_mL.minus(x.lavage_mL), 'lavage_mL'),
  }),
  suction_loss_pcv: operation({
    fields: { jar_mL: amount('mL'), pcv_jar: percent(), pcv_patient: percent() },
    formula: 'mL = jar (mL) × PCV of the jar ÷ PCV of the patient',
    units: ['mL'],
    run: (x) =>
      x.pcv_jar.gt(x.pcv_patient)
        ? wrongOrder('pcv_jar', x.pcv_jar, x.pcv_patient)
        : gives(x.jar_mL.times(x.pcv_jar).div(x.pcv_patient), 'mL'),
  }),
  transfusion_volume: operation({
    fields: {
      mL_kg: positive('mL/kg'),
      weight_kg: positive('kg'),
      pcv_now: percent(),
      pcv_goal: percent(),
      pcv_donor: percent(),
    },
    formula: 'mL = blood volume (mL/kg × kg) × (PCV goal − PCV now) ÷ PCV of the donor blood',
    units: ['mL'],
    run: (x) =>
      x.pcv_goal.lt(x.pcv_now)
        ? wrongOrder('pcv_now', x.pcv_now, x.pcv_goal)
        : gives(x.mL_kg.times(x.weight_kg).times(x.pcv_goal.minus(x.pcv_now)).div(x.pcv_donor), 'mL'),
  }),
  pcv_rise_cat: operation({
    fields: { mL: positive('mL'), weight_kg: positive('kg') },
    formula: 'rise of PCV (%) = mL of whole blood ÷ (2 × kg); cat only, wide error',
    units: ['%'],
    run: (x) => gives(x.mL.div(x.weight_kg.times(2)), '%'),
  }),
}
