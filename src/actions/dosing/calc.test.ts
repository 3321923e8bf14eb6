import { describe, expect, it } from 'vitest'
import { InputError } from '../input.ts'
import { calc, calcList } from './calc.ts'

function errorOf(input: unknown): InputError {
  try {
    calc(input)
  } catch (error) {
    if (error instanceof InputError) return error
    throw error
  }
  throw new Error('It was answered.')
}

const value = (input: unknown) => calc(input).value

describe('the calculator at the door', () => {
  it('names the nearest formulas when the name is wrong', () => {
    const error = errorOf({ op: 'bolus_volum' })
    expect(error).toMatchObject({ code: 'unknown-op', path: 'op' })
    expect(error.message).toContain('bolus_volume')
  })

  it('does not take a name of the language for a formula or a field', () => {
    expect(errorOf({ op: 'constructor' }).code).toBe('unknown-op')
    expect(errorOf({ op: 'lb_to_kg', weight_lb: 8, toString: 1 }).code).toBe('unknown-field')
  })

  it('names a missing field with its unit', () => {
    const error = errorOf({ op: 'volume_from_mass', mass_mg: 24 })
    expect(error).toMatchObject({ code: 'missing-field', path: 'stock_mg_mL' })
    expect(error.message).toContain('(mg/mL)')
  })

  it('names an unknown field and the fields it has', () => {
    const error = errorOf({ op: 'lb_to_kg', weight_kg: 8 })
    expect(error).toMatchObject({ code: 'unknown-field', path: 'weight_kg' })
    expect(error.message).toContain('weight_lb')
  })

  it('takes a dose unit only from the closed choice', () => {
    const input = { op: 'dose_mass', dose: 5, dose_unit: 'mg/lb', weight_kg: 10 }
    expect(errorOf(input)).toMatchObject({ path: 'dose_unit' })
    expect(errorOf(input).message).toContain('mg/kg, ug/kg, g/kg')
  })

  it('refuses a quantity, a text and a number that is not above zero where a bare number is wanted', () => {
    expect(errorOf({ op: 'lb_to_kg', weight_lb: { value: 8, unit: '[lb_av]' } }).path).toBe('weight_lb')
    expect(errorOf({ op: 'lb_to_kg', weight_lb: '8' }).path).toBe('weight_lb')
    expect(errorOf({ op: 'lb_to_kg', weight_lb: 0 }).message).toContain('more than zero')
    expect(errorOf({ op: 'lb_to_kg', weight_lb: null }).path).toBe('weight_lb')
  })

  it('refuses a number so large that its answer would be none, and answers quickly just below', () => {
    expect(errorOf({ op: 'lb_to_kg', weight_lb: 1e300 }).message).toContain('must not be above')
    const late = { op: 'anaesthetic_rate_hour', start_mL_kg_h: 5, cut_fraction: 0.25, hour: 1e9, weight_kg: 20 }
    expect(calc(late).value).toBe(0)
  })

  it('refuses what is no object', () => {
    expect(errorOf('bolus_volume').code).toBeTruthy()
    expect(errorOf(null).code).toBeTruthy()
    expect(errorOf({}).path).toBe('op')
  })
})

describe('answers that are a refusal', () => {
  it('refuses a negative loss and says what would make it possible', () => {
    const answer = calc({ op: 'swab_loss', dry_g: 10, wet_g: 12, saline_mL: 4, g_per_mL: 1 })
    expect(answer).toMatchObject({ value: null, refusal: { code: 'result-negative', field: 'wet_g' } })
    expect(answer.refusal?.text).toContain('-2 mL')
    expect(calc({ op: 'suction_loss', suction_mL: 100, lavage_mL: 140 }).value).toBeNull()
  })

  it('refuses two units that measure different things', () => {
    expect(calc({ op: 'convert_rate', value: 1, from: 'mg/kg/h', to: 'mL/kg/h' }).refusal?.code).toBe(
      'units-do-not-match',
    )
    const mixed = { op: 'bolus_volume_generic', dose: 1, dose_unit: '[iU]/kg', weight_kg: 1, stock: 1 }
    expect(calc({ ...mixed, stock_unit: 'mg/mL' }).refusal?.code).toBe('units-do-not-match')
  })

  it('refuses a lowest haematocrit above the start, a goal below the present value, a diastolic above the systolic', () => {
    expect(calc({ op: 'allowable_blood_loss', ebv_mL: 1000, hct_start: 20, hct_min: 25 }).value).toBeNull()
    const goal = { op: 'transfusion_volume', mL_kg: 90, weight_kg: 10, pcv_now: 30, pcv_goal: 20, pcv_donor: 42 }
    expect(calc(goal).refusal?.code).toBe('wrong-order')
    expect(calc({ op: 'map', sap: 60, dap: 120 }).refusal?.code).toBe('wrong-order')
  })

  it('refuses a weight outside the label table and names the table', () => {
    const heavy = calc({ op: 'label_band', product: 'meloxicam 1 mg', weight_kg: 23 })
    expect(heavy.refusal?.text).toContain('15.1–20.0 kg')
    expect(calc({ op: 'label_band', product: 'something', weight_kg: 5 }).refusal?.code).toBe('no-such-product')
    expect(calc({ op: 'label_band', product: 'toString', weight_kg: 5 }).refusal?.code).toBe('no-such-product')
  })

  it('refuses a dose band that no whole tablet meets', () => {
    const input = { op: 'whole_tablet_band', dose_low: 1, dose_high: 2, weight_kg: 1, strengths_mg: [5, 10] }
    expect(calc(input).refusal?.code).toBe('no-whole-tablets')
  })
})

describe('formulas worked out here', () => {
  it('counts the tablets of a course: 1.5 twice a day for 7 days are 21, halves are rounded up to whole', () => {
    expect(value({ op: 'tablets_dispense', tablets_per_dose: 1.5, doses_per_day: 2, days: 7 })).toBe(21)
    expect(value({ op: 'tablets_dispense', tablets_per_dose: 0.5, doses_per_day: 1, days: 7 })).toBe(4)
  })

  it('counts the days of a box: 30 tablets at 1.5 twice a day last 10 days', () => {
    expect(value({ op: 'days_supply', tablets: 30, tablets_per_dose: 1.5, doses_per_day: 2 })).toBe(10)
  })

  it('gives the rate per hour of 24 mL/lb/day in a 10 lb animal: 10 mL/h', () => {
    expect(value({ op: 'hourly_from_daily_lb', mL_lb_day: 24, weight_lb: 10 })).toBe(10)
  })

  it('drips 250 mL/h through a 20-drop set at 83.3 drops a minute, like the published rate per kg', () => {
    const perKg = { op: 'drops_per_min', drops_per_mL: 20, rate_mL_kg_h: 10, weight_kg: 25 }
    expect(value({ op: 'drops_per_min_rate', drops_per_mL: 20, rate_mL_h: 250 })).toBe(value(perKg))
  })

  it('names the bag convention: nothing withdrawn makes the bag weaker', () => {
    const bag = { op: 'cri_delivered_dose', stock_mg_mL: 20, added_mL: 50, bag_mL: 1000, rate_mL_kg_h: 1 }
    expect(calc(bag).value).toBe(1)
    expect(calc(bag).formula).toContain('withdrawn first')
    const full = calc({ ...bag, own_volume: 'added' })
    expect(full.value).toBeCloseTo(1000 / 1050, 12)
    expect(full.formula).toContain('nothing withdrawn')
  })

  it('makes the strength it was asked for, by either convention', () => {
    const want = { op: 'dilution_volume', stock_mg_mL: 40, target_mg_mL: 4, bag_mL: 90 }
    const added = value({ ...want, own_volume: 'added' })
    expect(added).toBe(10)
    const mixed = { op: 'strength_after_dilution', stock_mg_mL: 40, drug_mL: 10, diluent_mL: 90 }
    expect(value(mixed)).toBe(4)
    const withdrawn = value(want)
    expect(withdrawn).toBe(9)
    expect(value({ ...mixed, drug_mL: 9, diluent_mL: 81 })).toBe(4)
  })

  it('divides the allowable loss by the start or by the mean; the mean always says more, because it is the lower value', () => {
    const dog = { ebv_mL: 1800, hct_start: 40, hct_min: 25 }
    expect(value({ op: 'allowable_blood_loss', ...dog })).toBe(675)
    // 1800 × 15 ÷ 32.5
    expect(value({ op: 'allowable_blood_loss_mean', ...dog })).toBeCloseTo(830.769, 3)
  })

  it('reads 2 % as 20 mg/mL and 1:1000 as 1 mg/mL', () => {
    expect(value({ op: 'percent_strength', percent: 2 })).toBe(20)
    expect(value({ op: 'ratio_strength', one_in: 1000 })).toBe(1)
  })

  it('draws 1.64 mL as 1.6 in a 3 mL syringe, and counts 8 mg of 2 mg/kg in 8 kg as half of the ceiling', () => {
    expect(value({ op: 'drawn_volume', volume_mL: 1.64 })).toBe(1.6)
    expect(value({ op: 'local_anaesthetic_share', given_mg: 8, limit_mg_kg: 2, weight_kg: 8 })).toBe(0.5)
  })

  it('keeps the decimal digits that were written', () => {
    expect(value({ op: 'volume_from_mass', mass_mg: 0.3, stock_mg_mL: 0.1 })).toBe(3)
    expect(value({ op: 'lb_to_kg', weight_lb: 27 })).toBe(12.24699399)
  })

  it('cuts each hour from the hour before and stops at the floor', () => {
    const third = { op: 'anaesthetic_rate_hour', start_mL_kg_h: 5, cut_fraction: 0.25, hour: 3, weight_kg: 20 }
    expect(value(third)).toBe(56.25)
    expect(value({ ...third, floor_mL_kg_h: 3 })).toBe(60)
  })
})

describe('the list of formulas', () => {
  it('gives each formula fields with units, one sentence and sources', () => {
    const list = calcList()
    expect(list.length).toBeGreaterThanOrEqual(48)
    for (const { sentence, fields, sources } of list) {
      expect(sentence).toMatch(/\.$/)
      expect(fields.every(({ unit }) => unit.length > 0)).toBe(true)
      expect(sources.length).toBeGreaterThan(0)
    }
  })
})
