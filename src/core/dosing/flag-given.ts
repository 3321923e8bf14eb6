import { Temporal } from 'temporal-polyfill'
import { asDose } from '#core/formulary/drug.ts'
import { doseUnits, routes, type Use, uses } from '#core/formulary/words.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { fromStored } from '#core/journal/stored.ts'
import { type AnyQuantity, convert, Quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import type { DoseFinding } from './findings.ts'
import { dosedAnimalOf, givenOf } from './from-journal.ts'
import type { DosingKnowledge, PlannedLine } from './request.ts'

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
  const animal = dosedAnimalOf(theCase, given.at)
  const line = lineOf(given, animal?.weight)
  if (!animal || !line) return []
  const request = { animal, given: givenOf(theCase, given.at), at: Temporal.Instant.from(given.at), lines: [line] }
  const { lines } = doseLines(request, knowledge)
  return lines.flatMap(({ findings }) => findings.filter(({ code }) => !aboutThePlan.has(code)))
}

/** Whether a plan can be drawn up is no question any more once it was given. */
const aboutThePlan = new Set([
  'weight-unconfirmed',
  'volume-too-small',
  'rounded-to-nothing',
  'rounding-shifts-dose',
  'row-ambiguous',
])

function lineOf({ header, body }: Given, weight: Quantity<'kg'> | undefined): PlannedLine | undefined {
  const use = uses.find((word): word is Use => word === body.use)
  const route = routes.find((word) => word === body.route)
  const amount = fromStored(body.amount) as unknown as AnyQuantity
  const mass = convert(amount, 'mg')
  const dose = mass && weight ? new Quantity(mass.value.div(weight.value), 'mg/kg') : asDose(amount, doseUnits)
  if (!use || !dose) return undefined
  const planned = asDose(dose as AnyQuantity, doseUnits)
  return planned && { id: header.id, drug: body.drug, use, dose: planned, ...(route && { route }) }
}
