import { formulary } from '#content/formulary/index.ts'
import { susceptibility } from '#content/susceptibility/index.ts'
import { specimenRules } from '#content/susceptibility/specimen-rules.ts'
import { factsOfHouse } from '#core/culture/house-facts.ts'
import { type ReportReading, readReport } from '#core/culture/read-report.ts'
import { type SpecimenStanding, specimenStanding } from '#core/culture/specimen-standing.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'

export type Report = Line<BodyOf<'specimen-result'>>

/** A report read by the edition it was judged by, or by that of today; null where nobody knows the species. */
export function readingOf(file: CaseFile, report: Report): ReportReading | null {
  return readReport(file, report, factsOfHouse(file, susceptibility))
}

/** The sample behind a report, on this day. */
export function standingOfSpecimen(file: CaseFile, report: Report, at: string): SpecimenStanding | null {
  return specimenStanding(file, report, { at, drugs: formulary, rules: specimenRules })
}
