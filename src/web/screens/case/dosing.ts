import { Temporal } from 'temporal-polyfill'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { doseFindingWords } from '#content/wording/dosing-findings.ts'
import { type DoseResult, doseLines } from '#core/dosing/dose-lines.ts'
import type { DoseFinding } from '#core/dosing/findings.ts'
import { flagsOfGiven } from '#core/dosing/flag-given.ts'
import { dosedAnimalOf, givenOf, linesOfOperation } from '#core/dosing/from-journal.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'

const judged = new WeakMap<CaseFile, Map<string, DoseResult | null>>()

/** The planned lines of one operation, worked out again at the moment they were planned; null without an animal. */
export function dosesOf(file: CaseFile, operation: string): DoseResult | null {
  const known = judged.get(file) ?? new Map<string, DoseResult | null>()
  judged.set(file, known)
  const before = known.get(operation)
  if (before !== undefined) return before
  const made = workOut(file, operation)
  known.set(operation, made)
  return made
}

function workOut(file: CaseFile, operation: string): DoseResult | null {
  const { at, lines } = linesOfOperation(file.theCase, operation)
  if (at === undefined) return null
  const animal = dosedAnimalOf(file.theCase, at, dosingRules)
  if (!animal) return null
  const request = { animal, given: givenOf(file.theCase, at), at: Temporal.Instant.from(at), lines }
  return doseLines(request, knowledgeOf(file))
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
export function sayFinding({ code, about }: DoseFinding): string {
  const said = fill(doseFindingWords[code], about)
  return said.charAt(0).toUpperCase() + said.slice(1)
}
