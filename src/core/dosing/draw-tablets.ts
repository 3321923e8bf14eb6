import type { Dose } from '#core/formulary/drug.ts'
import { convert, plain, Quantity } from '#core/units/quantity.ts'
import { deliveredBy } from './amount.ts'
import { dispense } from './dispense.ts'
import { type Drawing, type Drawn, shift, strengthUnfit } from './drawing.ts'
import { type DoseFinding, found } from './findings.ts'
import { type LabelBand, labelBand } from './label-band.ts'
import { roundingCeiling } from './limits.ts'
import type { Tablet } from './plan.ts'
import { countTablets, courseOf, dividesOf, roundsOf, type TabletBand, type TabletCount } from './tablets.ts'

/** The number of tablets for one dose, what they really give, and the number for the course. */
export function drawTablets(drawing: Drawing, tablet: Tablet): Drawn {
  const { drug, row, dose, amount, line } = drawing
  const mass = convert(amount, 'mg')
  if (!mass) return { measured: {}, findings: [strengthUnfit(drawing, `tablet of ${tablet.strength}`)] }
  const divides = dividesOf(tablet, row)
  const band = bandOf(drawing, mass)
  const label = labelBand(drawing, tablet)
  const ownMost = label?.table && massAt(label.table.most, drawing, mass)
  const rounds = roundsOf(tablet, row)
  const counted = label?.tablets
    ? inLabel(label.tablets, tablet, { ...band, ...(ownMost && { ceiling: ownMost }) })
    : countTablets(mass, tablet.strength, divides, { ...band, rounds })
  const about = { drug: drug.name, amount: mass.toString(), strength: tablet.strength.toString(), divides }
  if (counted.kind === 'none') return { measured: {}, findings: [found('block', 'tablet-does-not-fit', about)] }

  const each = counted.count
  const held = new Quantity(each.value.times(tablet.strength.value), 'mg')
  const delivered = deliveredBy(held, mass, dose)
  const total = courseOf(each, row.interval.value, line.days)
  const shown = { ...about, count: plain(each.value) }
  const { dispensed, findings } = dispense(drug.name, row, each, line.days)
  const tablets = {
    each,
    strength: tablet.strength,
    ...(total && { total }),
    ...(label?.band && { label: { fromKg: label.band.fromKg, toKg: label.band.toKg } }),
  }
  return {
    measured: { delivered, tablets, ...(dispensed && { dispense: dispensed }) },
    findings: [
      ...findings,
      ...(label?.findings ?? []),
      ...overMaximum(drawing, held, delivered, label),
      ...(divides === 'unknown' ? [found('note', 'tablet-not-cut', about, row.tablets ? [row.tablets] : [])] : []),
      ...(rounds || label?.tablets ? [] : direction(drawing, { held, mass, delivered }, shown, counted.kind)),
      ...rounding(drawing, delivered, shown, counted.kind === 'fits'),
    ],
  }
}

/** The label's own count stands up to that label's own most, even where another label's is lower; that is said beside it. */
function inLabel(each: Quantity<'{tablet}'>, tablet: Tablet, { low, high, ceiling }: TabletBand): TabletCount {
  const mass = each.value.times(tablet.strength.value)
  if (ceiling && mass.gt(ceiling.value)) return { kind: 'none' }
  return { kind: mass.gte(low.value) && mass.lte(high.value) ? 'fits' : 'rounded', count: each }
}

function overMaximum(
  drawing: Drawing,
  held: Quantity<'mg'>,
  delivered: Dose,
  label: LabelBand | undefined,
): DoseFinding[] {
  const { drug, row, dose, amount } = drawing
  const most = roundingCeiling(row, dose, amount)
  const ceiling = most && convert(most, 'mg')
  if (!label?.table || !ceiling || held.value.lte(ceiling.value)) return []
  const about = {
    drug: drug.name,
    delivered: shortOf(delivered),
    most: `${plain(ceiling.value.toSignificantDigits(4))} mg`,
  }
  return [found('confirm', 'label-over-maximum', about, [label.table, ...(row.maxSingle ? [row.maxSingle] : [])])]
}

function shortOf({ value, unit }: Dose): string {
  return `${plain(value.toSignificantDigits(4))} ${unit}`
}

/** The row's range and ceiling as milligrams of this one dose. */
function bandOf(drawing: Drawing, mass: Quantity<'mg'>): TabletBand {
  const { row, dose } = drawing
  const { low, high } = row.range.value
  const most = roundingCeiling(row, dose, mass)
  const ceiling = most && convert(most, 'mg')
  return { low: massAt(low, drawing, mass), high: massAt(high, drawing, mass), ...(ceiling && { ceiling }) }
}

/** Another dose for this animal, from the milligrams of the planned one. */
function massAt(other: Dose, { dose }: Drawing, mass: Quantity<'mg'>): Quantity<'mg'> {
  const same = convert(other, dose.unit)
  if (!same) throw new Error(`${other} and ${dose} are not of one kind.`)
  return new Quantity(mass.value.times(same.value).div(dose.value), 'mg')
}

/** Inside the range a rounded count is only noted; outside it a person confirms. */
function rounding(drawing: Drawing, delivered: Dose, shown: Record<string, string>, fits: boolean): DoseFinding[] {
  if (shift(drawing, delivered).length === 0) return []
  const about = { ...shown, delivered: shortOf(delivered) }
  return [found(fits ? 'note' : 'confirm', 'tablet-rounding', about, [drawing.row.range, drawing.rules.rounding])]
}

/**
 * Which way the label rounds is not known: down is the safe way, and said; up, or down and out of the range, a person
 * confirms with the label in hand.
 */
function direction(
  { row }: Drawing,
  { held, mass, delivered }: { readonly held: Quantity<'mg'>; readonly mass: Quantity<'mg'>; readonly delivered: Dose },
  shown: Record<string, string>,
  kind: TabletCount['kind'],
): DoseFinding[] {
  if (held.value.eq(mass.value)) return []
  const way = held.value.gt(mass.value) ? 'up' : 'down'
  const isSafe = way === 'down' && kind === 'fits'
  const about = { ...shown, way, delivered: shortOf(delivered) }
  return [found(isSafe ? 'note' : 'confirm', 'tablet-direction-unknown', about, [row.tablets ?? row.range])]
}
