import { refuse } from '#core/outcome/outcome.ts'
import { Decimal } from '#core/units/quantity.ts'
import { count, oneOf, positive, several, tabletPiece, word } from './fields.ts'
import { mgPerKg } from './mass-and-volume.ts'
import { type CalcFacts, type CalcOutcome, gives, operation } from './operation.ts'
import { kilograms } from './pounds.ts'

const dose = { dose: positive('dose_unit'), dose_unit: oneOf('mg/kg', 'ug/kg') }
const tablet = { tablet_mg: positive('mg'), fraction: tabletPiece }

/** Tablets in pieces of `piece`, rounded as `rounding` says. */
function inPieces(mass: Decimal, tabletMg: Decimal, piece: Decimal, rounding: 'up' | 'nearest'): CalcOutcome {
  const mode = rounding === 'up' ? Decimal.ROUND_CEIL : Decimal.ROUND_HALF_UP
  const pieces = mass.div(tabletMg).div(piece).toDecimalPlaces(0, mode)
  return gives(pieces.times(piece), '{tablet}')
}

function bandOf(product: string, weight: Decimal, facts: CalcFacts): CalcOutcome {
  const bands = Object.hasOwn(facts.labelBands, product) ? facts.labelBands[product] : undefined
  if (!bands) {
    const known = Object.keys(facts.labelBands).join(', ')
    return refuse({ because: 'no-such-product', field: 'product', about: { product, known } })
  }
  const band = bands.find(({ value }) => weight.gte(value.fromKg) && weight.lte(value.toKg))
  if (band) return gives(new Decimal(band.value.tablets), '{tablet}')
  const known = bands.map(({ value }) => `${value.fromKg}–${value.toKg} kg`).join(', ')
  return refuse({
    because: 'no-band-for-weight',
    field: 'weight_kg',
    about: { weight: weight.toFixed(), product, known },
  })
}

/**
 * Fewest whole tablets of one strength that bring the dose into its band; the larger strength on a tie, as the
 * label's own bands do.
 */
function wholeTablets(low: Decimal, high: Decimal, strengths: readonly Decimal[]): CalcOutcome {
  const ways = strengths
    .map((strength) => ({ strength, tablets: low.div(strength).ceil() }))
    .filter(({ strength, tablets }) => strength.times(tablets).lte(high))
    .sort((a, b) => a.tablets.comparedTo(b.tablets) || b.strength.comparedTo(a.strength))
  const [best] = ways
  if (!best) {
    const about = { low: low.toFixed(), high: high.toFixed(), known: strengths.map((s) => s.toFixed()).join(', ') }
    return refuse({ because: 'no-whole-tablets', field: 'strengths_mg', about })
  }
  return gives(best.strength.times(best.tablets), 'mg', {
    detail: `${best.tablets.toFixed()} × ${best.strength.toFixed()} mg`,
  })
}

export const tablets = {
  tablets_round_up: operation({
    fields: { ...dose, weight_kg: positive('kg'), ...tablet },
    formula: 'tablets = dose (mg/kg) × kg ÷ tablet (mg), rounded up to the next piece',
    units: ['{tablet}'],
    run: (x) => inPieces(mgPerKg(x.dose, x.dose_unit).times(x.weight_kg), x.tablet_mg, x.fraction, 'up'),
  }),
  tablets_nearest_lb: operation({
    fields: { ...dose, weight_lb: positive('[lb_av]'), ...tablet },
    formula: 'tablets = dose (mg/kg) × lb × 0.45359237 ÷ tablet (mg), to the nearest piece',
    units: ['{tablet}'],
    run: (x) =>
      inPieces(mgPerKg(x.dose, x.dose_unit).times(kilograms(x.weight_lb)), x.tablet_mg, x.fraction, 'nearest'),
  }),
  label_band: operation({
    fields: { product: word('name of the product in the label table'), weight_kg: positive('kg') },
    formula: 'tablets = the line of the label table that holds the weight; no rounding rule',
    units: ['{tablet}'],
    run: (x, facts) => bandOf(x.product, x.weight_kg, facts),
  }),
  whole_tablet_band: operation({
    fields: {
      dose_low: positive('mg/kg'),
      dose_high: positive('mg/kg'),
      weight_kg: positive('kg'),
      strengths_mg: several('mg'),
    },
    formula: 'mg = fewest whole tablets of one strength with low × kg ≤ mg ≤ high × kg; the larger strength on a tie',
    units: ['mg'],
    run: (x) => {
      if (x.dose_low.gt(x.dose_high)) {
        const about = { field: 'dose_low', value: x.dose_low.toFixed(), than: x.dose_high.toFixed() }
        return refuse({ because: 'wrong-order', field: 'dose_low', about })
      }
      return wholeTablets(x.dose_low.times(x.weight_kg), x.dose_high.times(x.weight_kg), x.strengths_mg)
    },
  }),
  tablets_dispense: operation({
    fields: {
      tablets_per_dose: positive('{tablet}'),
      doses_per_day: positive('/d'),
      days: count('d'),
    },
    formula: 'tablets to dispense = tablets per dose × doses per day × days, up to the next whole tablet',
    units: ['{tablet}'],
    run: (x) => gives(x.tablets_per_dose.times(x.doses_per_day).times(x.days).ceil(), '{tablet}'),
  }),
  days_supply: operation({
    fields: { tablets: positive('{tablet}'), tablets_per_dose: positive('{tablet}'), doses_per_day: positive('/d') },
    formula: 'days = tablets ÷ (tablets per dose × doses per day)',
    units: ['d'],
    run: (x) => gives(x.tablets.div(x.tablets_per_dose.times(x.doses_per_day)), 'd'),
  }),
  patch_lookup: operation({
    fields: { weight_kg: positive('kg') },
    formula: 'patch (ug/h) = the line of the published table that holds the weight',
    units: ['ug/h'],
    run: (x, facts) => {
      const band = facts.patchSizes.find(({ value }) => {
        if (value.toKg === null) return true
        return value.included ? x.weight_kg.lte(value.toKg) : x.weight_kg.lt(value.toKg)
      })
      if (!band) throw new Error('The table of patches must end with a line for every greater weight.')
      return gives(new Decimal(band.value.size), 'ug/h')
    },
  }),
}
