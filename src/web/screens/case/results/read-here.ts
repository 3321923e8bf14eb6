import { formulary } from '#content/formulary/index.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { specimenRules } from '#content/susceptibility/specimen-rules.ts'
import type { SusceptibilityFacts } from '#core/culture/facts.ts'
import { factsOfHouse } from '#core/culture/house-facts.ts'
import { type ReportReading, readReport } from '#core/culture/read-report.ts'
import { type SpecimenStanding, specimenStanding } from '#core/culture/specimen-standing.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'

export type Report = Line<BodyOf<'specimen-result'>>

const known = new WeakMap<CaseFile, SusceptibilityFacts>()

/** What this clinic reads cultures by: its own copies of the standards beside ours; worked out once for a file. */
export function factsHere(file: CaseFile): SusceptibilityFacts {
  const before = known.get(file)
  if (before) return before
  const made = factsOfHouse(file, susceptibility)
  known.set(file, made)
  return made
}

/** A report read by the edition it was judged by, or by that of today; null where nobody knows the species. */
export function readingOf(file: CaseFile, report: Report): ReportReading | null {
  return readReport(file, report, factsHere(file))
}

/** The sample behind a report, on this day. */
export function standingOfSpecimen(file: CaseFile, report: Report, at: string): SpecimenStanding | null {
  return specimenStanding(file, report, { at, drugs: formulary, rules: specimenRules })
}
