import { type AnyQuantity, convert, plain, Quantity } from '#core/units/quantity.ts'
import { type Drawing, type Drawn, strengthMissing, strengthUnfit } from './drawing.ts'
import { type DoseFinding, found } from './findings.ts'
import { volumeOf } from './volume.ts'

/** The pump rate of an infusion, and what runs in over the stated time. */
export function drawInfusion(drawing: Drawing): Drawn {
  const { amount, line, drug } = drawing
  const total = line.over && totalOf(amount, line.over)
  const findings: DoseFinding[] = []
  if (!line.over) findings.push(found('note', 'duration-not-chosen', { drug: drug.name }))
  const perHour = massPerHour(amount)
  const direct = convert(amount, 'mL/h')
  const rate = direct ?? (perHour && line.stock && asRate(volumeOf(perHour, line.stock)))
  if (!direct && !line.stock) findings.push(strengthMissing(drawing))
  if (!rate && line.stock) findings.push(strengthUnfit(drawing, line.stock.toString()))
  const least = drawing.rules.slowestRate
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

/** What one hour of a rate holds. */
function massPerHour(rate: AnyQuantity): AnyQuantity | undefined {
  if (rate.unit === 'mg/h') return new Quantity(rate.value, 'mg')
  if (rate.unit === 'ug/h') return new Quantity(rate.value, 'ug')
  if (rate.unit === 'mL/h') return new Quantity(rate.value, 'mL')
  if (rate.unit === 'mmol/h') return new Quantity(rate.value, 'mmol')
  return undefined
}

function asRate(volume: Quantity<'mL'> | undefined): Quantity<'mL/h'> | undefined {
  return volume && new Quantity(volume.value, 'mL/h')
}

function totalOf(rate: AnyQuantity, over: Quantity<'min'>): AnyQuantity | undefined {
  const hour = massPerHour(rate)
  return hour && (new Quantity(hour.value.times(over.value).div(60), hour.unit) as AnyQuantity)
}
