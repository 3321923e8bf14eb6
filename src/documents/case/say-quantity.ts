import type { StoredQuantity } from '#core/journal/stored.ts'
import type { Decimal } from '#core/units/quantity.ts'
import { plain } from '#core/units/quantity.ts'
import type { Unit } from '#core/units/unit.ts'

/** Units as people write them. UCUM stays in files and on the wire; `ug` becomes "microgram", never "µg". */
const spelled: Partial<Record<Unit, string>> = {
  ug: 'microgram',
  'ug/kg': 'microgram/kg',
  'ug/mL': 'microgram/mL',
  'ug/kg/h': 'microgram/kg/h',
  'ug/kg/min': 'microgram/kg/min',
  'ug/h': 'microgram/h',
  'ug/m2': 'microgram/m²',
  'mg/m2': 'mg/m²',
  m2: 'm²',
  '[iU]': 'units',
  '[iU]/kg': 'units/kg',
  '[iU]/mL': 'units/mL',
  '[lb_av]': 'lb',
  '%{vol}': '% by volume',
  '{tablet}': 'tablet',
  'mg/{tablet}': 'mg in a tablet',
  'mg/{animal}': 'mg for the animal',
  'cm/{eye}': 'cm in the eye',
  '[drp]/{eye}': 'drop in the eye',
  'mm[Hg]': 'mmHg',
  Cel: '°C',
  '/min': 'a minute',
  'mm/min': 'mm in a minute',
}

/** A quantity for paper: no trailing nought, a leading nought before the point, the unit spelled. */
export function sayQuantity({ value, unit }: { readonly value: Decimal; readonly unit: Unit }): string {
  return `${plain(value)} ${spelled[unit] ?? unit}`
}

/** The same for a quantity as it stands in an entry: its own digits. */
export function sayUnit({ value, unit }: StoredQuantity<Unit>): string {
  return `${value} ${spelled[unit] ?? unit}`
}
