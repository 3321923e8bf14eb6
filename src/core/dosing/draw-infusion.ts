import { type AnyQuantity, convert, plain, Quantity } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'
import { deliveredBy } from './amount.ts'
import { hourOf } from './container.ts'
import { type Drawing, type Drawn, strengthMissing, strengthUnfit } from './drawing.ts'
import { type DoseFinding, found } from './findings.ts'
import { fluidPlan } from './fluids.ts'
import { loadingOf } from './loading.ts'
import type { Measured } from './request.ts'
import { volumeOf } from './volume.ts'

/** The pump rate of an infusion, what runs in over the stated time, and what goes into its bag or syringe. */
export function drawInfusion(drawing: Drawing): Drawn {
  const { line, drug } = drawing
  const run = drawing.poured ? fromContainer(drawing) : neat(drawing)
  const loading = loadingOf(drawing)
  const fluid = fluidOf(drawing)
  const findings = [
    ...(line.over || line.container ? [] : [found('note', 'duration-not-chosen', { drug: drug.name })]),
    ...run.findings,
    ...loading.findings,
    ...fluid.findings,
  ]
  return { measured: { ...bothWays(drawing), ...run.measured, ...loading.measured, ...fluid.measured }, findings }
}

/** Straight from the product: the rate is the strength's, and nothing is mixed. */
function neat(drawing: Drawing): Drawn {
  const { amount, line, drug, rules } = drawing
  const total = line.over && totalOf(amount, line.over)
  const findings: DoseFinding[] = []
  const direct = convert(amount, 'mL/h')
  const rate = direct ?? (line.stock && asRate(volumeOf(hourOf(amount), line.stock)))
  if (!direct && !line.stock) findings.push(strengthMissing(drawing))
  if (!rate && line.stock) findings.push(strengthUnfit(drawing, line.stock.toString()))
  const least = rules.slowestRate
  if (rate?.value.lt(least.value.value)) {
    const about = {
      drug: drug.name,
      rate: `${plain(rate.value.toSignificantDigits(3))} mL/h`,
      least: least.value.toString(),
    }
    findings.push(found('note', 'rate-too-slow', about, [least]))
  }
  return { measured: { ...(rate && { rate }), ...(total && { total }) }, findings }
}

/** From a bag or a syringe that was made for one rate; what it gives is worked back from its label. */
function fromContainer({ amount, dose, line, poured }: Drawing): Drawn {
  if (!poured) return { measured: {}, findings: [] }
  const { mine, pump } = poured
  const total = line.over && totalOf(amount, line.over)
  const delivered = deliveredBy(
    mine.perHour as Quantity<AnyQuantity['unit']>,
    amount as Quantity<AnyQuantity['unit']>,
    dose,
  )
  const measured = { volume: mine.volume, drawn: mine.drawn, delivered, rate: pump, poured, ...(total && { total }) }
  return { measured, findings: [] }
}

/** The dose per hour and per minute: one is what the formulary says, the other guards against a sixtyfold slip. */
function bothWays({ dose }: Drawing): Pick<Measured, 'perHour' | 'perMinute'> {
  const [hour, minute] = bothUnits[dose.unit] ?? []
  const perHour = hour && convert(dose, hour)
  const perMinute = minute && convert(dose, minute)
  return {
    ...(perHour && { perHour: perHour as AnyQuantity }),
    ...(perMinute && { perMinute: perMinute as AnyQuantity }),
  }
}

const bothUnits: Partial<Record<Unit, readonly [Unit, Unit?]>> = {
  'mg/kg/h': ['mg/kg/h', 'mg/kg/min'],
  'mg/kg/min': ['mg/kg/h', 'mg/kg/min'],
  'ug/kg/h': ['ug/kg/h', 'ug/kg/min'],
  'ug/kg/min': ['ug/kg/h', 'ug/kg/min'],
  'mL/kg/h': ['mL/kg/h', 'mL/kg/min'],
  'mmol/kg/h': ['mmol/kg/h'],
}

/** Maintenance, hourly cuts and deficit of a fluid. */
function fluidOf({ amount, line, row, rules, body }: Drawing): Drawn {
  const rate = convert(amount, 'mL/h')
  if (!rate || row.use !== 'fluid') return { measured: {}, findings: [] }
  const { over, deficit } = line
  const asked = { species: row.species, weight: body.weight, rate, ...(over && { over }), ...(deficit && { deficit }) }
  const fluid = fluidPlan(asked, rules.fluids)
  const { most } = rules.fluids
  const together = fluid.deficit?.together
  if (!together || together.value.lte(most.value.value.times(body.weight.value))) {
    return { measured: { fluid }, findings: [] }
  }
  const perKg = together.value.div(body.weight.value).toSignificantDigits(3)
  const about = { sum: `${plain(perKg)} mL/kg/h`, most: most.value.toString() }
  return { measured: { fluid }, findings: [found('confirm', 'fluid-over-most', about, [most])] }
}

function asRate(volume: Quantity<'mL'> | undefined): Quantity<'mL/h'> | undefined {
  return volume && new Quantity(volume.value, 'mL/h')
}

function totalOf(rate: AnyQuantity, over: Quantity<'min'>): AnyQuantity {
  const hour = hourOf(rate)
  return new Quantity(hour.value.times(over.value).div(60), hour.unit) as AnyQuantity
}
