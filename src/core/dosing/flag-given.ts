import { Temporal } from 'temporal-polyfill'
import { asDose, type Dose, type DoseRow, type Drug, drugById } from '#core/formulary/drug.ts'
import { doseUnits, routes, type Use, uses } from '#core/formulary/words.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { convert, Decimal, Quantity } from '#core/units/quantity.ts'
import { bodySurface } from './amount.ts'
import { doseLines } from './dose-lines.ts'
import type { DoseCode, DoseFinding } from './findings.ts'
import { amountGiven, dosedAnimalOf, givenBefore, plannedFor } from './from-journal.ts'
import type { DosedAnimal, DosingKnowledge, PlannedLine } from './request.ts'
import { leanWeight, usesLeanWeight } from './weight.ts'

type Given = Line<BodyOf<'drug-given'>>

/**
 * What a check would have blocked or asked to confirm about each dose that was really given. Recording is never
 * refused; this is how the record is flagged instead. Doses that cannot be held against the formulary have no entry.
 *
 * @example flagsOfGiven(theCase, { drugs: formulary, rules: dosingRules, plans: [], policies: [] }).get(entryId)
 */
export function flagsOfGiven(theCase: Case, knowledge: DosingKnowledge): ReadonlyMap<string, readonly DoseFinding[]> {
  const flags = new Map<string, readonly DoseFinding[]>()
  for (const given of theCase.live('drug-given')) {
    const found = judgeGiven(given, theCase, knowledge).filter(({ level }) => level !== 'note')
    if (found.length > 0) flags.set(given.header.id, found)
  }
  return flags
}

/** The dose that was given, judged as if it were planned at that moment, after everything given before it. */
function judgeGiven(given: Given, theCase: Case, knowledge: DosingKnowledge): DoseFinding[] {
  const animal = dosedAnimalOf(theCase, given.at, knowledge.rules)
  const line = animal && lineOf(given, animal, theCase, knowledge)
  if (!animal || !line) return []
  const earlier = givenBefore(theCase, given.header.id)
  const request = { animal, given: earlier, at: Temporal.Instant.from(given.at), lines: [line] }
  const { lines } = doseLines(request, knowledge)
  return lines.flatMap(({ findings }) => findings.filter(({ code }) => !aboutThePlan.has(code)))
}

/** Whether a plan can be drawn up, or which row it meant, is no question any more once it was given. */
export const aboutThePlan: ReadonlySet<DoseCode> = new Set<DoseCode>([
  'weight-unconfirmed',
  'weight-unknown',
  'volume-too-small',
  'rounded-to-nothing',
  'rounding-shifts-dose',
  'row-ambiguous',
  'dose-not-chosen',
  'choice-ambiguous',
  'dose-unit-not-listed',
  'ear-product-not-measured',
])

/** What was given as a line of a plan; without a dose where the record does not say how much it was per kilogram. */
function lineOf(
  { header, body }: Given,
  animal: DosedAnimal,
  theCase: Case,
  knowledge: DosingKnowledge,
): PlannedLine | undefined {
  const drug = drugById(knowledge.drugs, body.drug)
  const rows = drug?.doses.filter(({ species }) => species === animal.species) ?? []
  const said = uses.find((word): word is Use => word === body.use)
  // Words of one's own for the use fit no range, but what the drug meets is judged all the same.
  const use = said ?? rows[0]?.use ?? 'premed'
  const route = routes.find((word) => word === body.route)
  if (!drug) return undefined
  const fitting = rows.filter((row) => row.use === use && (!route || row.routes.includes(route)))
  const dose = said && doseOf(body, drug, fitting, animal, theCase, knowledge)
  const planned = plannedFor(theCase, body)?.qualifier
  const meant = planned === undefined ? mostLikely(fitting, dose) : { qualifier: planned }
  return { id: header.id, drug: drug.id, use, ...(route && { route }), ...(dose && { dose }), ...wordsOf(meant) }
}

type RowWords = Pick<DoseRow, 'qualifier' | 'formulation'>

export function wordsOf(row: RowWords | undefined): RowWords {
  const { qualifier, formulation } = row ?? {}
  return { ...(qualifier !== undefined && { qualifier }), ...(formulation !== undefined && { formulation }) }
}

/** Of several rows that fit what was recorded, the one whose range lies nearest: the record names no row. */
export function mostLikely(rows: readonly DoseRow[], dose: Dose | undefined): DoseRow | undefined {
  const [first] = rows
  if (!dose) return first
  const far = (row: DoseRow): Decimal => {
    const { low, high } = row.range.value
    const inUnit = convert(dose, low.unit)?.value
    if (!inUnit || inUnit.lte(0)) return new Decimal(Number.MAX_SAFE_INTEGER)
    return Decimal.max(1, inUnit.div(high.value), low.value.div(inUnit))
  }
  return [...rows].sort((a, b) => far(a).comparedTo(far(b)))[0]
}

/** The amount given, per what the row counts by: kilogram (lean where that counts), surface, or the whole animal. */
function doseOf(
  body: BodyOf<'drug-given'>,
  drug: Drug,
  rows: readonly DoseRow[],
  animal: DosedAnimal,
  theCase: Case,
  { rules }: DosingKnowledge,
): Dose | undefined {
  const amount = amountGiven(theCase, body)
  const mass = convert(amount, 'mg')
  if (!mass) return asDose(amount, doseUnits)
  const units = rows.map(({ range }) => range.value.low.unit)
  if (units.length > 0 && units.every((unit) => unit === 'mg/{animal}')) return new Quantity(mass.value, 'mg/{animal}')
  if (!animal.weight) return undefined
  const usesLean = rows[0] !== undefined && usesLeanWeight(drug, rows[0].use, rules)
  const weight = usesLean ? leanWeight(animal.weight, animal.bodyCondition, rules.weight) : animal.weight
  if (units.length === 0 || units.some((unit) => !unit.endsWith('/m2')))
    return new Quantity(mass.value.div(weight.value), 'mg/kg')
  const surface = bodySurface(weight, rules.bodySurface[animal.species].value)
  return new Quantity(mass.value.div(surface.value), 'mg/m2')
}
