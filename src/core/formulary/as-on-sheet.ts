import type { Species } from '#core/animal/species.ts'
import type { EmergencyGroup, EmergencyRow } from '#core/dosing/emergency-row.ts'
import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { AnyQuantity } from '#core/units/quantity.ts'
import { asDose, type DoseRange, type DoseRow } from './drug.ts'
import { doseUnits } from './words.ts'

type FromSheet = Pick<DoseRow, 'species' | 'use' | 'routes' | 'range'>

/**
 * The one number of the emergency sheet as a row of the formulary, so that it stands in one file only.
 * Throws when the sheet has none, so that a renamed drug is seen at once.
 *
 * @example asOnSheet(emergencyNoPulse, 'vasopressin', 'dog').range.value.low // 0.8 [iU]/kg
 */
export function asOnSheet(group: EmergencyGroup, drug: string, species: Species): FromSheet {
  const { routes, dose } = rowOf(group, drug, species)
  return { species, use: 'emergency', routes, range: single(dose.value, dose) }
}

/** The infusion that follows the bolus of the sheet. Example: `followOnSheet(emergencyFastWideRhythm, 'esmolol', 'dog')`. */
export function followOnSheet(group: EmergencyGroup, drug: string, species: Species): FromSheet {
  const { routes, follow } = rowOf(group, drug, species)
  if (!follow) throw new Error(`The emergency sheet has no infusion of ${drug} for a ${species}.`)
  return { species, use: 'cri', routes: routes.slice(0, 1), range: single(follow.value.rate, follow) }
}

function rowOf({ call, rows }: EmergencyGroup, drug: string, species: Species): EmergencyRow {
  const row = rows.find((one) => one.drug === drug && one.species.includes(species))
  if (!row) throw new Error(`The emergency sheet has no ${drug} for a ${species} under ${call}.`)
  return row
}

function single(value: AnyQuantity, from: Provenance): Sourced<DoseRange> {
  const dose = asDose(value, doseUnits)
  if (!dose) throw new Error(`${value} is no dose of the formulary.`)
  return { ...from, value: { low: dose, high: dose } }
}
