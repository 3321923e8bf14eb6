import { Temporal } from 'temporal-polyfill'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { type DoseResult, doseLines } from '#core/dosing/dose-lines.ts'
import { dosedAnimalOf, givenOf, linesOfOperation } from '#core/dosing/from-journal.ts'
import type { CaseFile } from '#core/journal/clinic.ts'

/**
 * The planned lines of one operation judged again with today's formulary, at the moment they were planned and with
 * what the case knew then. Null when the operation has no planned line or the animal is not known.
 */
export function judgeOperation({ theCase }: Pick<CaseFile, 'theCase'>, operation: string): DoseResult | null {
  const { at, lines } = linesOfOperation(theCase, operation)
  const animal = at === undefined ? undefined : dosedAnimalOf(theCase, at, dosingRules)
  if (at === undefined || !animal) return null
  const request = { animal, given: givenOf(theCase, at), at: Temporal.Instant.from(at), lines }
  return doseLines(request, { drugs: formulary, rules: dosingRules, plans: [], policies: [] })
}
