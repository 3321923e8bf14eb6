import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { calc } from './calc.ts'

/** Decimal numbers with two places, as people write them. */
const hundredths = (min: number, max: number) => fc.integer({ min: min * 100, max: max * 100 }).map((n) => n / 100)
const weight = hundredths(0.3, 90)
const strength = hundredths(0.1, 100)

function result(input: Record<string, unknown>): number {
  const { value } = calc(input)
  if (value === null) throw new Error(`${String(input.op)} was refused.`)
  return value
}

const near = (a: number, b: number, share = 1e-9) => expect(Math.abs(a - b)).toBeLessThanOrEqual(share * Math.abs(b))

describe('laws of the calculator', () => {
  it('mass to volume and back is the same mass', () => {
    fc.assert(
      fc.property(hundredths(0.01, 500), strength, (mass, stock) => {
        const volume = result({ op: 'volume_from_mass', mass_mg: mass, stock_mg_mL: stock })
        near(result({ op: 'mass_from_volume', volume_mL: volume, stock_mg_mL: stock }), mass)
      }),
    )
  })

  it('pounds to kilograms and back is the same weight', () => {
    fc.assert(
      fc.property(weight, (kg) => {
        const lb = result({ op: 'kg_to_lb', weight_kg: kg })
        near(result({ op: 'lb_to_kg', weight_lb: lb }), kg)
      }),
    )
  })

  it('a rate converted to another unit and back is the same rate', () => {
    const unit = fc.constantFrom('mg/kg/h', 'mg/kg/min', 'ug/kg/h', 'ug/kg/min')
    fc.assert(
      fc.property(hundredths(0.01, 100), unit, unit, (value, from, to) => {
        const there = result({ op: 'convert_rate', value, from, to })
        near(result({ op: 'convert_rate', value: there, from: to, to: from }), value)
      }),
    )
  })

  it('the dose recomputed from the label of the syringe is the dose that was ordered, within 2 %', () => {
    const dose = { op: 'cri_mass_in_volume', dose_unit: 'ug/kg/min' }
    fc.assert(
      fc.property(hundredths(0.5, 50), hundredths(0.2, 5), hundredths(20, 500), (ordered, rate, volume) => {
        const mass = result({ ...dose, dose: ordered, rate_mL_kg_h: rate, volume_mL: volume })
        // The nurse writes the mass and the volume on the syringe: that is its strength.
        const label = mass / volume
        const perHour = result({
          op: 'cri_delivered_dose',
          stock_mg_mL: label,
          added_mL: volume,
          bag_mL: volume,
          rate_mL_kg_h: rate,
        })
        near(result({ op: 'convert_rate', value: perHour, from: 'mg/kg/h', to: 'ug/kg/min' }), ordered, 0.02)
      }),
    )
  })

  it('the pump rate and the mass per hour agree', () => {
    fc.assert(
      fc.property(hundredths(0.1, 50), weight, strength, (ordered, kg, stock) => {
        const order = { dose: ordered, dose_unit: 'ug/kg/min', weight_kg: kg }
        const rate = result({ op: 'cri_pump_rate', ...order, stock, stock_unit: 'mg/mL' })
        near(rate * stock, result({ op: 'cri_mass_per_hour', ...order }))
      }),
    )
  })

  it('tablets rounded up never give less than the dose, and never a whole piece more', () => {
    const piece = fc.constantFrom(1, 0.5, 0.25)
    fc.assert(
      fc.property(hundredths(0.1, 20), weight, hundredths(1, 100), piece, (dose, kg, tablet, fraction) => {
        const order = { dose, dose_unit: 'mg/kg', weight_kg: kg, tablet_mg: tablet, fraction }
        const given = result({ op: 'tablets_round_up', ...order })
        const wanted = (dose * kg) / tablet
        expect(given).toBeGreaterThanOrEqual(wanted - 1e-9)
        expect(given - wanted).toBeLessThan(fraction + 1e-9)
      }),
    )
  })

  it('whole tablets stay inside the dose band or are refused', () => {
    fc.assert(
      fc.property(weight, (kg) => {
        const order = { dose_low: 1, dose_high: 2, weight_kg: kg, strengths_mg: [5, 10, 20, 40] }
        const { value } = calc({ op: 'whole_tablet_band', ...order })
        if (value === null) {
          expect(kg).toBeLessThan(5)
          return
        }
        expect(value).toBeGreaterThanOrEqual(kg - 1e-9)
        expect(value).toBeLessThanOrEqual(2 * kg + 1e-9)
      }),
    )
  })

  it('a swab never loses a negative volume', () => {
    fc.assert(
      fc.property(hundredths(0, 50), hundredths(0, 50), hundredths(0, 20), (dry, wet, saline) => {
        const { value, refusal } = calc({ op: 'swab_loss', dry_g: dry, wet_g: wet, saline_mL: saline, g_per_mL: 1 })
        if (value === null) expect(refusal?.code).toBe('result-negative')
        else expect(value).toBeGreaterThanOrEqual(0)
      }),
    )
  })
})
