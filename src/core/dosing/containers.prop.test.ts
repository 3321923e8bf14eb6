import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { Decimal, Quantity, quantity, scale } from '#core/units/quantity.ts'
import { type Container, fill, type Part } from './container.ts'
import { doseLines } from './dose-lines.ts'
import { hourlyCut, maintenanceOf } from './fluids.ts'
import type { DrawnLine, PlannedLine } from './request.ts'
import { recipeFor } from './volume.ts'

const { infusions, fluids } = dosingRules
const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const options = { dilutions: dosingRules.dilutions.value }
const hundredths = (from: number, to: number) => fc.integer({ min: from, max: to }).map((n) => new Decimal(n).div(100))
const tenths = (from: number, to: number) => fc.integer({ min: from, max: to }).map((n) => new Decimal(n).div(10))

const weight = tenths(20, 600).map((value) => new Quantity(value, 'kg'))
/** A pump's own steps, so that only the syringe rounds. */
const rate = tenths(20, 2000).map((value) => new Quantity(value, 'mL/h'))
const volume = fc.integer({ min: 20, max: 1000 }).map((value) => new Quantity(new Decimal(value), 'mL'))
const hourly = hundredths(5, 5000).map((value) => new Quantity(value, 'mg/h'))
const stock = fc.constantFrom('1', '5', '10', '20', '50', '100').map((value) => quantity(value, 'mg/mL'))
const part = fc.record({ perHour: hourly, stock }).map((one): Part => ({ line: 'a', ...one }))
const twoParts = fc.tuple(part, part).map(([a, b]): Part[] => [a, { ...b, line: 'b' }])
const container = fc.record({
  kind: fc.constantFrom('bag' as const, 'syringe' as const),
  volume,
  rate,
  ownVolume: fc.constantFrom(undefined, 'withdrawn' as const, 'added' as const),
})
const named = ({
  ownVolume,
  ...rest
}: { ownVolume: 'withdrawn' | 'added' | undefined } & Omit<Container, 'name' | 'ownVolume'>): Container => ({
  name: 'x',
  ...rest,
  ...(ownVolume && { ownVolume }),
})
const filled = (one: Container, parts: readonly Part[], kg: Quantity<'kg'>) => {
  const outcome = fill(one, parts, kg, infusions, options)
  return outcome.kind === 'answer' ? outcome.answer : undefined
}

describe('for every bag and syringe', () => {
  it('hours to empty × rate is the volume, and fluid and drugs together are it', () => {
    fc.assert(
      fc.property(container, twoParts, weight, (sent, parts, kg) => {
        const one = filled(named(sent), parts, kg)
        if (!one) return
        expect(one.lasts.value.times(one.pump.value).minus(one.final.value).abs().lt('1e-25')).toBe(true)
        const drugs = one.parts.reduce((sum, { drawn }) => sum.plus(drawn.value), new Decimal(0))
        const whole = one.convention === 'withdrawn' ? sent.volume.value : one.fluid.value.plus(drugs)
        expect(
          whole.minus(one.final.value).abs().lte(drugs.minus(sent.volume.value).clampedTo(0, 1e9).plus('1e-25')),
        ).toBe(true)
      }),
    )
  })

  it('the dose worked back from the label is the prescribed one, but for the marks of the syringe and four figures', () => {
    fc.assert(
      fc.property(container, part, weight, (sent, one, kg) => {
        const bag = filled(named(sent), [one], kg)
        const mine = bag?.parts[0]
        if (!bag || !mine) return
        const off = mine.perHour.value.div(one.perHour.value).minus(1).abs()
        const mark = mine.volume.value.lte(1)
          ? '0.01'
          : mine.volume.value.lte(3)
            ? '0.1'
            : mine.volume.value.lte(5)
              ? '0.2'
              : mine.volume.value.lte(10)
                ? '0.5'
                : '1'
        const half = new Decimal(mark).div(2).div(mine.volume.value)
        expect(off.lte(half.plus('0.0006'))).toBe(true)
      }),
      { numRuns: 500 },
    )
  })

  it('a bag whose drug volume is taken out and a syringe made up hold the same drug', () => {
    fc.assert(
      fc.property(volume, rate, part, weight, (mL, perHour, one, kg) => {
        const bag = filled({ kind: 'bag', name: 'x', volume: mL, rate: perHour, ownVolume: 'withdrawn' }, [one], kg)
        const syringe = filled({ kind: 'syringe', name: 'x', volume: mL, rate: perHour }, [one], kg)
        expect(bag?.parts).toEqual(syringe?.parts)
      }),
    )
  })

  it('a drug on top of a full bag is as strong as one made up: amount ÷ volume is the same before rounding', () => {
    fc.assert(
      fc.property(volume, rate, part, weight, (mL, perHour, one, kg) => {
        const added = filled({ kind: 'bag', name: 'x', volume: mL, rate: perHour, ownVolume: 'added' }, [one], kg)
        const mine = added?.parts[0]
        if (!added || !mine) return
        const exact = mine.volume.value.times(mine.from.value).div(mL.value.plus(mine.volume.value))
        expect(exact.minus(one.perHour.value.div(perHour.value)).abs().lt('1e-25')).toBe(true)
      }),
    )
  })

  it('twice the dose is twice the drug, before rounding', () => {
    fc.assert(
      fc.property(volume, rate, part, weight, (mL, perHour, one, kg) => {
        const bag: Container = { kind: 'bag', name: 'x', volume: mL, rate: perHour, ownVolume: 'withdrawn' }
        const twice = { ...one, perHour: new Quantity(one.perHour.value.times(2), 'mg/h') }
        const [a, b] = [filled(bag, [one], kg)?.parts[0], filled(bag, [twice], kg)?.parts[0]]
        if (!a || !b || a.dilutedTo !== b.dilutedTo) return
        expect(b.volume.value.minus(a.volume.value.times(2)).abs().lt('1e-25')).toBe(true)
      }),
    )
  })

  it('nothing is drawn that no syringe can measure', () => {
    fc.assert(
      fc.property(container, twoParts, weight, (sent, parts, kg) => {
        for (const { volume: exact } of filled(named(sent), parts, kg)?.parts ?? []) {
          expect(exact.value.gte('0.05')).toBe(true)
        }
      }),
    )
  })
})

describe('for every planned infusion', () => {
  const infusion = (kg: Quantity<'kg'>, ug: Decimal, more: Partial<PlannedLine> = {}): DrawnLine | undefined => {
    const line: PlannedLine = {
      id: 'k',
      drug: 'ketamine',
      use: 'cri',
      dose: new Quantity(ug, 'ug/kg/min'),
      stock: quantity('100', 'mg/mL'),
      ...more,
    }
    const animal = { species: 'dog', weight: kg, conditions: [] } as const
    const [answer] = doseLines({ animal, given: [], lines: [line] }, knowledge).lines
    return answer && answer.verdict !== 'refused' ? answer : undefined
  }
  const kilograms = tenths(20, 390).map((value) => new Quantity(value, 'kg'))
  const perMinute = tenths(20, 200)

  it('twice the weight is twice the amount and twice the rate', () => {
    fc.assert(
      fc.property(kilograms, perMinute, (kg, ug) => {
        const [one, two] = [infusion(kg, ug), infusion(scale(kg, '2'), ug)]
        expect(two?.amount.value.eq(one?.amount.value.times(2) ?? 0)).toBe(true)
        expect(
          two?.rate?.value
            .minus(one?.rate?.value.times(2) ?? 0)
            .abs()
            .lt('1e-25'),
        ).toBe(true)
      }),
      { numRuns: 60 },
    )
  })

  it('kilograms and pounds, minutes and hours, milligrams and micrograms ask for the same', () => {
    fc.assert(
      fc.property(tenths(50, 800), perMinute, (lb, ug) => {
        const kg = new Quantity(lb.times('0.45359237'), 'kg')
        const asMinute = infusion(kg, ug)
        const asHour = infusion(kg, ug, { dose: new Quantity(ug.times(60).div(1000), 'mg/kg/h') })
        expect(
          asHour?.rate?.value
            .minus(asMinute?.rate?.value ?? 0)
            .abs()
            .lt('1e-25'),
        ).toBe(true)
        expect(asHour?.amount.value.times(1000).eq(asMinute?.amount.value ?? 0)).toBe(true)
      }),
      { numRuns: 60 },
    )
  })

  it('the weight cancels when a syringe runs per kilogram', () => {
    const container: Container = {
      kind: 'syringe',
      name: 'k',
      volume: quantity('60', 'mL'),
      rate: quantity('0.5', 'mL/kg/h'),
    }
    fc.assert(
      fc.property(kilograms, kilograms, perMinute, (a, b, ug) => {
        const [one, two] = [infusion(a, ug, { container }), infusion(b, ug, { container })]
        expect(
          one?.volume?.value
            .minus(two?.volume?.value ?? 0)
            .abs()
            .lt('1e-25'),
        ).toBe(true)
      }),
      { numRuns: 60 },
    )
  })
})

describe('for every fluid and dilution', () => {
  it('no hour runs faster than the one before, none below maintenance unless it began there', () => {
    fc.assert(
      fc.property(weight, tenths(10, 100), fc.integer({ min: 1, max: 1440 }), (kg, perKg, minutes) => {
        const start = new Quantity(perKg.times(kg.value), 'mL/h')
        const floor = maintenanceOf('dog', kg, fluids).perHour
        const hours = hourlyCut(start, floor, new Quantity(new Decimal(minutes), 'min'), fluids)
        expect(hours).toHaveLength(Math.ceil(minutes / 60))
        const rates = hours.map((hour) => hour.rate.value)
        for (const [index, value] of rates.entries()) {
          expect(value.lte(rates[index - 1] ?? start.value)).toBe(true)
          expect(value.gte(Decimal.min(floor.value, start.value))).toBe(true)
        }
      }),
    )
  })

  it('a recipe makes the strength it names, and enough for the syringe', () => {
    fc.assert(
      fc.property(hundredths(5, 2000), fc.constantFrom(10, 100), (drawn, parts) => {
        const { product, diluent } = recipeFor(new Quantity(drawn, 'mL'), parts)
        const whole = product.value.plus(diluent.value)
        expect(whole.div(product.value).eq(parts)).toBe(true)
        expect(whole.gte(drawn)).toBe(true)
      }),
    )
  })
})
