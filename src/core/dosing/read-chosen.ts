import type { Species } from '#core/animal/species.ts'
import { type LeafRefusal, readQuantityText, readText } from '#core/forms/read-leaf.ts'
import { type DoseRow, type Drug, rowKey } from '#core/formulary/drug.ts'
import { type DoseUnit, doseUnits, type Route, type Use } from '#core/formulary/words.ts'
import { fromStored, type StoredQuantity } from '#core/journal/stored.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { units } from '#core/units/unit.ts'
import { judgeRange } from './chosen-dose.ts'
import type { DoseFinding } from './findings.ts'
import type { DosingRules } from './rules.ts'

/** A dose as a person chooses it for the house: everything as typed or picked, nothing filled in. */
export type ChosenDraft = {
  readonly drug: string
  /** The key of the formulary row (`rowKey`). */
  readonly row: string
  readonly route: string
  readonly dose: string
  readonly because: string
}

export type ChosenDose = {
  readonly drug: string
  readonly use: Use
  readonly route: Route
  readonly qualifier: string | null
  readonly dose: StoredQuantity<DoseUnit>
  readonly because: string
}

export type ChosenRefusal =
  | ({ readonly at: keyof ChosenDraft } & LeafRefusal)
  /** The dose is so far from the range that a slip of the unit is likely: it must be typed again. */
  | { readonly at: 'dose'; readonly because: 'blocked'; readonly finding: DoseFinding }

/** The rows of a drug for one animal. */
export function rowsFor(drug: Drug | undefined, species: Species): readonly DoseRow[] {
  return drug?.doses.filter((row) => row.species === species) ?? []
}

/**
 * The dose of a row as typed, in a unit of the same kind as the row's; the unit is never guessed.
 *
 * @example readDoseFor(row, '1 mg/kg', '.') // { value: '1', unit: 'mg/kg' }
 */
export function readDoseFor(
  row: DoseRow,
  text: string,
  decimalMark: '.' | ',',
): Outcome<StoredQuantity<DoseUnit>, LeafRefusal> {
  const { unit } = row.range.value.low
  const alike = doseUnits.filter((one) => units[one].dimension === units[unit].dimension)
  const read = readQuantityText(text, [unit, ...alike.filter((one) => one !== unit)], { decimalMark })
  return read.kind === 'refusal' ? read : answer(read.answer as StoredQuantity<DoseUnit>)
}

/** What is to be said of a dose beside the row's ranges: below, above, far above. Nothing inside. */
export function judgeChosen(drug: Drug, row: DoseRow, dose: StoredQuantity<DoseUnit>, rules: DosingRules) {
  return judgeRange(drug.name, row, fromStored(dose) as Parameters<typeof judgeRange>[2], rules)
}

/**
 * Reads a chosen dose for a usual plan or a dose policy, or says of each field what is missing. A dose that a plan
 * could never keep (a likely slip of the unit, five times the range) is refused here already.
 *
 * @example readChosen({ drug: 'maropitant', row, route: 'SC', dose: '1 mg/kg', because: 'The label.' }, facts)
 */
export function readChosen(
  draft: ChosenDraft,
  facts: {
    readonly drugs: readonly Drug[]
    readonly species: Species
    readonly rules: DosingRules
    readonly decimalMark: '.' | ','
  },
): Outcome<ChosenDose, readonly ChosenRefusal[]> {
  const drug = facts.drugs.find(({ id }) => id === draft.drug)
  const row = rowsFor(drug, facts.species).find((one) => rowKey(one) === draft.row)
  const because = readText(draft.because, 300)
  const unwritten: ChosenRefusal[] = because.kind === 'refusal' ? [{ at: 'because', ...because.refusal }] : []
  if (!drug) return refuse([{ at: 'drug', because: 'not-chosen', about: {} }, ...unwritten])
  if (!row) return refuse([{ at: 'row', because: 'not-chosen', about: {} }, ...unwritten])
  const route = row.routes.find((one) => one === draft.route)
  const dose = readDoseFor(row, draft.dose, facts.decimalMark)
  const blocks =
    dose.kind === 'answer'
      ? judgeChosen(drug, row, dose.answer, facts.rules).filter(({ level }) => level === 'block')
      : []
  const refusals: ChosenRefusal[] = [
    ...(route ? [] : [{ at: 'route', because: 'not-chosen', about: {} } as const]),
    ...(dose.kind === 'refusal' ? [{ at: 'dose', ...dose.refusal } as const] : []),
    ...blocks.map((finding) => ({ at: 'dose', because: 'blocked', finding }) as const),
    ...unwritten,
  ]
  if (refusals.length > 0 || !route || dose.kind === 'refusal' || because.kind === 'refusal') return refuse(refusals)
  return answer({
    drug: drug.id,
    use: row.use,
    route,
    qualifier: row.qualifier ?? null,
    dose: dose.answer,
    because: String(because.answer),
  })
}
