import { animalWordsInEnglish } from '#content/wording/app-formulary.ts'
import { doseFindingWords, liftedWords } from '#content/wording/dosing-findings.ts'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import { sayLifted } from '#core/dosing/emergency-declared.ts'
import type { DoseFinding } from '#core/dosing/findings.ts'
import { flagsOfGiven } from '#core/dosing/flag-given.ts'
import { planAsWritten } from '#core/dosing/plan-as-written.ts'
import { judgedAt, type PlanNow, planNow } from '#core/dosing/plan-now.ts'
import { saidConditions } from '#core/dosing/said-conditions.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { spellUnits } from '#core/units/unit-words.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'

const plans = new WeakMap<CaseFile, Map<string, { readonly at: string; readonly plan: PlanNow }>>()

/** The plan of one operation at an instant; worked out once, however many parts of a page show it. */
export function planAt(file: CaseFile, operation: OperationOnFile, at: string): PlanNow {
  const known = plans.get(file) ?? new Map<string, { readonly at: string; readonly plan: PlanNow }>()
  plans.set(file, known)
  const last = known.get(operation.id)
  if (last?.at === at) return last.plan
  const plan = planNow(file, operation, at, knowledgeOf(file))
  known.set(operation.id, { at, plan })
  return plan
}

/**
 * The plan of an operation that is not over, as it stands in this minute. Whatever is on record counts, also of the
 * seconds since the minute began.
 */
export function planInMinute(file: CaseFile, operation: OperationOnFile, now: string): PlanNow {
  return planAt(file, operation, judgedAt(file.theCase, `${now.slice(0, 16)}:00.000Z`))
}

/** That the weight itself waits to be confirmed is said once, above a plan, and not at every line. */
export function beyondWeight(findings: readonly DoseFinding[]): DoseFinding[] {
  return findings.filter(({ code }) => code !== 'weight-unconfirmed')
}

const judged = new WeakMap<CaseFile, Map<string, DoseResult | null>>()

/**
 * The planned lines of an operation that is over, worked out again at the moment they were planned; null without an
 * animal.
 */
export function dosesOf(file: CaseFile, operation: string): DoseResult | null {
  const known = judged.get(file) ?? new Map<string, DoseResult | null>()
  judged.set(file, known)
  const before = known.get(operation)
  if (before !== undefined) return before
  const made = planAsWritten(file, operation, knowledgeOf(file))
  known.set(operation, made)
  return made
}

const flags = new WeakMap<CaseFile, ReadonlyMap<string, readonly DoseFinding[]>>()

/** What a check would have said before each dose that was given; worked out once for a file. */
export function givenFlags(file: CaseFile): ReadonlyMap<string, readonly DoseFinding[]> {
  const known = flags.get(file)
  if (known) return known
  const made = flagsOfGiven(file.theCase, knowledgeOf(file))
  flags.set(file, made)
  return made
}

/** A finding as a sentence. */
export function sayFinding(finding: DoseFinding): string {
  const said = spellUnits(fill(doseFindingWords[finding.code], saidConditions(finding.about, animalWordsInEnglish)))
  const whole = said.charAt(0).toUpperCase() + said.slice(1)
  return [whole, sayLifted(finding, liftedWords)].filter(Boolean).join(' ')
}
