import { susceptibility } from '#content/susceptibility/index.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { carriagesOf } from '#core/culture/carriage.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { flagsOf } from '#core/reading/flags-of.ts'
import { sayCarriage } from '../letter/hygiene.ts'

/** What everybody at the table has to know of the animal before they touch it: what it carries, what it does not bear. */
export function saidFlags(file: CaseFile): string[] {
  const { theCase, clinic } = file
  return [
    ...carriagesOf(file, susceptibility).map((one) => sayCarriage(one, clinic.zone)),
    ...flagsOf(theCase).map(({ code, about }) => fill(caseInEnglish.flags[code], about)),
  ]
}
