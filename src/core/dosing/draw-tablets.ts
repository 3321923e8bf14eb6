import type { Dose } from '#core/formulary/drug.ts'
import { convert, plain, Quantity } from '#core/units/quantity.ts'
import { deliveredBy } from './amount.ts'
import { type Drawing, type Drawn, shift, strengthUnfit } from './drawing.ts'
import { type DoseFinding, found } from './findings.ts'
import { roundingCeiling } from './limits.ts'
import type { Tablet } from './plan.ts'
import { countTablets, courseOf, dividesOf, type TabletBand } from './tablets.ts'

/** The number of tablets for one dose, what they really give, and the number for the course. */
export function drawTablets(drawing: Drawing, tablet: Tablet): Drawn {
  const { drug, row, dose, amount, line } = drawing
  const mass = convert(amount, 'mg')
  if (!mass) return { measured: {}, findings: [strengthUnfit(drawing, `tablet of ${tablet.strength}`)] }
  const divides = dividesOf(tablet, row)
  const counted = countTablets(mass, tablet.strength, divides, bandOf(drawing, mass))
  const about = { drug: drug.name, amount: mass.toString(), strength: tablet.strength.toString(), divides }
  if (counted.kind === 'none') return { measured: {}, findings: [found('block', 'tablet-does-not-fit', about)] }

  const each = counted.count
  const held = new Quantity(each.value.times(tablet.strength.value), 'mg')
  const delivered = deliveredBy(held, mass, dose)
  const total = courseOf(each, row.interval.value, line.days)
  const shown = { ...about, count: plain(each.value) }
  return {
    measured: { delivered, tablets: { each, strength: tablet.strength, ...(total && { total }) } },
    findings: [
      ...(divides === 'unknown' ? [found('note', 'tablet-not-cut', about, row.tablets ? [row.tablets] : [])] : []),
      ...rounding(drawing, delivered, shown, counted.kind === 'fits'),
    ],
  }
}

/** The row's range and ceiling as milligrams of this one dose. */
function bandOf({ row, dose }: Drawing, mass: Quantity<'mg'>): TabletBand {
  const at = (end: Dose): Quantity<'mg'> => {
    const same = convert(end, dose.unit)
    if (!same) throw new Error(`${end} and ${dose} are not of one kind.`)
    return new Quantity(mass.value.times(same.value).div(dose.value), 'mg')
  }
  const most = roundingCeiling(row, dose, mass)
  const ceiling = most && convert(most, 'mg')
  return { low: at(row.range.value.low), high: at(row.range.value.high), ...(ceiling && { ceiling }) }
}

/** Inside the range a rounded count is only noted; outside it a person confirms. */
function rounding(drawing: Drawing, delivered: Dose, shown: Record<string, string>, fits: boolean): DoseFinding[] {
  if (shift(drawing, delivered).length === 0) return []
  const about = { ...shown, delivered: `${plain(delivered.value.toSignificantDigits(4))} ${delivered.unit}` }
  return [found(fits ? 'note' : 'confirm', 'tablet-rounding', about, [drawing.row.range, drawing.rules.rounding])]
}
