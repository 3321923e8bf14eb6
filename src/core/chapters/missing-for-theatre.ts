import { sides } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Case } from '#core/journal/fold.ts'
import { type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import { assessmentOf } from '#core/theatre/assessment-of.ts'
import { bloodTypeOf } from '#core/workup/blood-type.ts'
import { animalOf, chosenOperation } from './ears.ts'
import { type Missing, missingIn } from './missing.ts'

/** Whether an operation is ahead: chosen or booked, and not done. */
function hasOneAhead(theCase: Case): boolean {
  const operations = operationsOf({ theCase })
  if (operations.some(({ done }) => !done)) return true
  return sides.some(
    (side) => chosenOperation(theCase, side) !== null && !operations.some((one) => one.done && one.side === side),
  )
}

/** Blood before an operation: asked once one is chosen, never of an animal that only comes to be looked at. */
export function missingBloods({ theCase }: CaseFile): Missing[] {
  if (!hasOneAhead(theCase)) return []
  const missing = missingIn('Work-up', animalOf(theCase))
  const panels = new Set(theCase.live('blood-test').map(({ body }) => body.panel))
  const type = bloodTypeOf(theCase)
  // A cat may carry antibodies against the other group from birth: its first transfusion can already kill.
  const weight = theCase.latest('identity')?.body.species === 'dog' ? 'useful' : 'needed'
  return [
    ...(panels.has('haematology') ? [] : [missing('blood-cells-missing', 'blood-test')]),
    ...(panels.has('chemistry') ? [] : [missing('blood-chemistry-missing', 'blood-test')]),
    ...(panels.has('clotting') ? [] : [missing('clotting-missing', 'blood-test', { weight: 'useful' })]),
    ...(type.kind === 'known'
      ? []
      : [missing('blood-type-unknown', 'blood-type', { weight, about: { because: type.because } })]),
  ]
}

/** Class and airway of an anaesthetic that is ahead; once it was given, the assessment can only be what it was. */
export function missingAssessment(
  operation: OperationOnFile,
  operations: readonly OperationOnFile[],
  theCase: Case,
): Missing[] {
  if (operation.done) return []
  const missing = missingIn('Theatre', animalOf(theCase))
  const here = { operation: operation.id }
  const made = assessmentOf(operation, operations, theCase)
  if (!made) return [missing('assessment-missing', 'anaesthetic-assessment', here)]
  if (made.body.jawOpens !== 'not-assessed') return []
  const { header } = made
  return [missing('jaw-not-assessed', 'anaesthetic-assessment', { ...here, amends: header.id }, header.subject)]
}
