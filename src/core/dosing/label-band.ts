import { convert, Decimal, plain, Quantity } from '#core/units/quantity.ts'
import type { TabletBand } from './calc/operation.ts'
import type { Drawing } from './drawing.ts'
import { type DoseFinding, found } from './findings.ts'
import type { Tablet } from './plan.ts'
import type { LabelTable } from './rules.ts'
import { dividesOf } from './tablets.ts'

export type LabelBand = {
  /** The table that decided; absent when it has no line for this weight. */
  readonly table?: LabelTable
  readonly band?: TabletBand
  readonly tablets?: Quantity<'{tablet}'>
  readonly findings: readonly DoseFinding[]
}

/**
 * The line of the label's own table for this tablet, dose, gap and weight. Undefined when no label has a table for
 * exactly them; a weight outside the table is said.
 *
 * @example labelBand(drawing, { strength: quantity('1', 'mg') })?.tablets // half a tablet of meloxicam at 6.5 kg
 */
export function labelBand(drawing: Drawing, tablet: Tablet): LabelBand | undefined {
  const { drug, body, rules } = drawing
  const table = rules.labelTables.find((one) => isFor(one, drawing, tablet))
  if (!table) return undefined
  const bands = [...table.bands].sort((a, b) => new Decimal(a.value.fromKg).comparedTo(b.value.fromKg))
  // The label writes its weights to one place: 7.04 kg is in "4.0 to 7.0", 7.06 kg in "7.1 to 10.0".
  const weight = body.weight.value.toDecimalPlaces(1, Decimal.ROUND_HALF_UP)
  const band = bands.find(({ value }) => weight.gte(value.fromKg) && weight.lte(value.toKg))?.value
  if (band) return { table, band, tablets: new Quantity(new Decimal(band.tablets), '{tablet}'), findings: [] }
  const about = {
    drug: drug.name,
    strength: tablet.strength.toString(),
    weight: `${plain(body.weight.value)} kg`,
    known: bands.map(({ value }) => `${value.fromKg} to ${value.toKg} kg`).join(', '),
  }
  return { findings: [found('note', 'label-table-none', about, [table])] }
}

/** A tablet that is said to break otherwise is another product, and a chosen gap is another use. */
function isFor(table: LabelTable, { drug, row, line, dose }: Drawing, tablet: Tablet): boolean {
  return (
    table.drug === drug.id &&
    table.species === row.species &&
    table.use === row.use &&
    table.qualifier === row.qualifier &&
    table.size.value.eq(tablet.strength.value) &&
    table.divides === dividesOf(tablet, row) &&
    (line.every === undefined || line.every.value.eq(table.every.value)) &&
    convert(table.dose, dose.unit)?.value.eq(dose.value) === true
  )
}
