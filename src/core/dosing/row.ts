import type { Species } from '#core/animal/species.ts'
import type { Provenance } from '#core/evidence/sourced.ts'
import { type Dose, type DoseRow, type Drug, rowKey } from '#core/formulary/drug.ts'
import { answer, type Outcome, refuse } from '#core/outcome/outcome.ts'
import { units } from '#core/units/unit.ts'
import { type DoseFinding, found } from './findings.ts'
import type { PlannedLine } from './request.ts'

export type RowRefusal = { readonly finding: DoseFinding; readonly rows: readonly string[] }

/**
 * The one row of the formulary that a line means. When the words fit no row, or more than one, the line is
 * refused with the keys of the rows there are; the engine never picks between two rows.
 *
 * @example findRow(dexmedetomidine, 'dog', { id: 'l1', drug: 'dexmedetomidine', use: 'premed' }).kind // 'refusal'
 */
export function findRow(
  drug: Drug,
  species: Species,
  line: PlannedLine,
  dose: Dose | undefined,
): Outcome<DoseRow, RowRefusal> {
  const about = { drug: drug.name, species, use: line.use, route: line.route ?? '', unit: dose?.unit ?? '' }
  const ofSpecies = drug.doses.filter((row) => row.species === species)
  const keys = ofSpecies.map(rowKey)
  const no = (code: DoseFinding['code'], rows = keys, words = {}, from: readonly Provenance[] = []) =>
    refuse({ finding: found('block', code, { ...about, rows: rows.join('; ') || 'none', ...words }, from), rows })

  const ofUse = ofSpecies.filter((row) => row.use === line.use)
  const none = drug.none.find(
    (entry) =>
      entry.species === species &&
      (!entry.use || entry.use === line.use) &&
      (!entry.formulation || isFormulation(entry.formulation, line.formulation)),
  )
  if (none && (ofUse.length === 0 || none.formulation)) {
    const code = none.why === 'never' ? 'forbidden-for-species' : 'no-dose-for-species'
    return no(code, keys, { because: none.because }, [none])
  }
  if (ofSpecies.length === 0) return no('no-dose-for-species', keys, { because: 'the formulary holds no row' })
  if (ofUse.length === 0) return no('use-not-listed')

  const ofRoute = ofUse.filter((row) => fitsWords(row, line))
  if (ofRoute.length === 0) return no('route-not-listed', ofUse.map(rowKey))
  const ofUnit = dose ? ofRoute.filter((row) => sameDimension(row, dose)) : ofRoute
  if (ofUnit.length === 0) return no('dose-unit-not-listed', ofRoute.map(rowKey))
  const [row, second] = ofUnit
  if (!row || second) return no('row-ambiguous', ofUnit.map(rowKey))
  return answer(row)
}

function fitsWords(row: DoseRow, line: PlannedLine): boolean {
  return (
    (line.route === undefined || row.routes.includes(line.route)) &&
    (line.qualifier === undefined || row.qualifier === line.qualifier) &&
    // A formulation of its own is never reached by accident: it has to be named.
    isFormulation(row.formulation, line.formulation)
  )
}

/** Named in full ("liposomal, 13.3 mg/mL") or by its first words alone ("liposomal"). */
export function isFormulation(listed: string | undefined, asked: string | undefined): boolean {
  return listed === asked || (asked !== undefined && listed?.split(',')[0] === asked)
}

function sameDimension(row: DoseRow, dose: Dose): boolean {
  return units[row.range.value.low.unit].dimension === units[dose.unit].dimension
}

/** Drugs whose name or alias is close to a misspelt one; nothing is picked. */
export function nearNames(drugs: readonly Drug[], name: string): string[] {
  const wanted = name.trim().toLowerCase()
  const scored = drugs.map((drug) => ({
    id: drug.id,
    steps: Math.min(...[drug.id, ...drug.aliases].map((word) => distance(wanted, word.toLowerCase()))),
  }))
  return scored
    .filter(({ steps }) => steps <= Math.max(2, Math.floor(wanted.length / 4)))
    .sort((a, b) => a.steps - b.steps || (a.id < b.id ? -1 : 1))
    .slice(0, 3)
    .map(({ id }) => id)
}

/** Levenshtein's distance: letters to add, drop or change (Levenshtein 1966). */
function distance(a: string, b: string): number {
  let previous = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const change = (previous[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)
      row.push(Math.min(change, (previous[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1))
    }
    previous = row
  }
  return previous[b.length] ?? 0
}
