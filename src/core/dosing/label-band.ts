import { convert, Decimal, plain, Quantity } from '#core/units/quantity.ts'
import type { TabletBand } from './calc/operation.ts'
import type { Drawing } from './drawing.ts'
import { type DoseFinding, found } from './findings.ts'
import type { Tablet } from './plan.ts'
import type { LabelTable } from './rules.ts'

export type LabelBand = {
  /** The table that decided; absent when it has no line for this weight. */
  readonly table?: LabelTable
  readonly band?: TabletBand
  readonly tablets?: Quantity<'{tablet}'>
  readonly findings: readonly DoseFinding[]
}

/**
 * The line of the label's own table for this tablet, dose and weight. Undefined when the label has no table for
 * them; a weight outside the table is said.
 *
 * @example labelBand(drawing, { strength: quantity('1', 'mg') })?.tablets // half a tablet of meloxicam at 6.5 kg
 */
export function labelBand({ drug, row, dose, body, rules }: Drawing, tablet: Tablet): LabelBand | undefined {
  const table = rules.labelTables.find(
    (one) =>
      one.drug === drug.id &&
      one.species === row.species &&
      one.use === row.use &&
      one.size.value.eq(tablet.strength.value) &&
      convert(one.dose, dose.unit)?.value.eq(dose.value) === true,
  )
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
