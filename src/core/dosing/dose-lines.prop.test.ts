import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { speciesList } from '#core/animal/species.ts'
import type { Dose, Drug, Stock } from '#core/formulary/drug.ts'
import { convert, Decimal, Quantity, quantity } from '#core/units/quantity.ts'
import { amountOf, bodySurface, kindOf } from './amount.ts'
import { doseLines } from './dose-lines.ts'
import { mostOf } from './limits.ts'
import type { DoseRequest, DrawnLine, Given, PlannedLine } from './request.ts'

const drugs: readonly Drug[] = formulary
const knowledge = { drugs, rules: dosingRules, plans: [], policies: [] }
const isDrawn = (line: { verdict: string }): line is DrawnLine => line.verdict !== 'refused'

/** Hundredths as exact decimal text, so that no binary fraction enters. */
const hundredths = (from: number, to: number) => fc.integer({ min: from, max: to }).map((n) => new Decimal(n).div(100))
const species = fc.constantFrom(...speciesList)
const weight = hundredths(210, 880).map((value) => new Quantity(value, 'kg'))
const local = fc.constantFrom('bupivacaine', 'lidocaine', 'ropivacaine')
const strength = fc.constantFrom('2.5', '5', '10', '20').map((value) => quantity(value, 'mg/mL'))

const blocks = fc
  .array(fc.record({ drug: local, dose: hundredths(5, 600), stock: strength }), { minLength: 1, maxLength: 5 })
  .map((lines): PlannedLine[] =>
    lines.map(({ drug, dose, stock }, i) => ({
      id: `l${i}`,
      drug,
      use: 'local_block',
      dose: new Quantity(dose, 'mg/kg'),
      stock,
    })),
  )
const given = fc
  .array(fc.record({ drug: local, mg: hundredths(10, 2000) }), { maxLength: 2 })
  .map((entries): Given[] => entries.map(({ drug, mg }) => ({ drug, amount: new Quantity(mg, 'mg') })))

const plans = fc.record({ species, weight, lines: blocks, given })
const requestOf = (plan: {
  species: 'dog' | 'cat'
  weight: Quantity<'kg'>
  lines: PlannedLine[]
  given: Given[]
}): DoseRequest => ({
  animal: { species: plan.species, weight: plan.weight, conditions: [] },
  given: plan.given,
  lines: plan.lines,
})

describe('local anaesthetic, for every plan', () => {
  it('stays at or under the one limit in what is granted, and in what the syringes hold', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const result = doseLines(requestOf(plan), knowledge)
        const ceiling = result.ceilings[0]
        if (!ceiling) return
        const before = ceiling.parts
          .filter(({ kind }) => kind === 'given')
          .reduce((sum, part) => sum.plus(part.fraction), new Decimal(0))
        const granted = result.lines.filter(isDrawn)
        if (granted.length === 0) return
        expect(ceiling.granted.lte(1)).toBe(true)
        const drawn = granted.reduce((sum, line) => {
          const limit = drugs.find(({ id }) => id === line.drug)?.localAnaesthetic?.limits[plan.species].value
          const delivered = line.delivered && convert(line.delivered, 'mg/kg')
          if (!limit || !delivered) throw new Error('A granted block has a limit and a delivered dose.')
          return sum.plus(delivered.value.div(limit.value))
        }, before)
        expect(drawn.lte(new Decimal(1).plus('1e-30'))).toBe(true)
      }),
      { numRuns: 400 },
    )
  })

  it('refuses no line while the sum has room', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const result = doseLines(requestOf(plan), knowledge)
        const used = result.ceilings[0]?.used ?? new Decimal(0)
        const barred = result.lines.filter(({ findings }) =>
          findings.some(({ code }) => code === 'local-anaesthetic-ceiling'),
        )
        const asked = result.ceilings[0]?.parts.some(({ kind }) => kind === 'planned') ?? false
        expect(barred.length > 0).toBe(asked && used.gt(1))
      }),
    )
  })
})

/** Every row of the formulary that has a dose, with a factor on its range and a strength that can hold it. */
const rows = drugs.flatMap((drug) => drug.doses.map((row) => ({ drug, row })))
const anyLine = fc.record({
  entry: fc.constantFrom(...rows),
  factor: hundredths(1, 1200),
  weight,
  stock: fc
    .constantFrom('0.1', '0.5', '2', '5', '10', '50', '100')
    .map((value) => quantity(value, 'mg/mL') as unknown as Stock),
})

function planOf({
  entry,
  factor,
  weight,
  stock,
}: {
  entry: (typeof rows)[number]
  factor: Decimal
  weight: Quantity<'kg'>
  stock: Stock
}) {
  const { drug, row } = entry
  const dose = new Quantity(row.range.value.high.value.times(factor), row.range.value.high.unit) as Dose
  const line: PlannedLine = {
    id: 'l',
    drug: drug.id,
    use: row.use,
    ...(row.routes[0] && { route: row.routes[0] }),
    ...(row.qualifier && { qualifier: row.qualifier }),
    ...(row.formulation && { formulation: row.formulation }),
    dose,
    stock,
  }
  const request: DoseRequest = {
    animal: { species: row.species, weight, conditions: [], ageMonths: 60 },
    given: [],
    lines: [line],
  }
  return { request, row, dose }
}

describe('a dose of any row of the formulary', () => {
  it('is at most its ceiling, planned and drawn, or it is refused', () => {
    fc.assert(
      fc.property(anyLine, (input) => {
        const { request, row, dose } = planOf(input)
        const [line] = doseLines(request, knowledge).lines
        if (!line || !isDrawn(line)) return
        const most = mostOf(row, dose, line.amount)
        if (!most) return
        expect(line.amount.value.lte(most.value)).toBe(true)
        if (line.delivered) {
          const real = line.delivered.value.div(line.dose.value).times(line.amount.value)
          expect(real.lte(most.value.times('1.000000000000000000000000000001'))).toBe(true)
        }
      }),
      { numRuns: 500 },
    )
  })

  it('carries nothing to draw up when it is refused, and a reason', () => {
    fc.assert(
      fc.property(anyLine, (input) => {
        const [line] = doseLines(planOf(input).request, knowledge).lines
        if (line?.verdict !== 'refused') return
        for (const field of ['amount', 'volume', 'drawn', 'delivered', 'tablets', 'rate', 'dilution'])
          expect(line).not.toHaveProperty(field)
        expect(line.findings.some(({ level }) => level === 'block')).toBe(true)
      }),
    )
  })

  it('never plans five times the upper end of its range', () => {
    fc.assert(
      fc.property(anyLine, (input) => {
        const [line] = doseLines(planOf(input).request, knowledge).lines
        if (input.factor.gte(5)) expect(line?.verdict).toBe('refused')
      }),
    )
  })

  it('doubles with the weight when it counts per kilogram, and stays when it counts per animal or eye', () => {
    fc.assert(
      fc.property(anyLine, ({ entry, weight }) => {
        const { row } = entry
        const dose = row.range.value.high
        const factor = dosingRules.bodySurface[row.species].value
        const bodyAt = (w: Quantity<'kg'>) => ({ weight: w, surface: bodySurface(w, factor) })
        const single = amountOf(dose, bodyAt(weight)).value
        const double = amountOf(dose, bodyAt(new Quantity(weight.value.times(2), 'kg'))).value
        const times = double.div(single).toDecimalPlaces(20)
        const kind = kindOf(dose)
        // Meeh: twice the weight is 2^(2/3) of the surface.
        const expected =
          kind === 'per-surface'
            ? new Decimal(2).pow(new Decimal(2).div(3))
            : new Decimal(kind.endsWith('flat') ? 1 : 2)
        expect(times.eq(expected.toDecimalPlaces(20))).toBe(true)
      }),
    )
  })
})
