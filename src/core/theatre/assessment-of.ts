import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { isAbout } from '#core/journal/lines-about.ts'
import { anaestheticOf } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'

/**
 * The assessment that counts for this operation: the last one written for it by name, else the last one of the animal
 * since its operation before. Both ears under one anaesthetic share one. Null while there is none; what was assessed for an earlier operation never counts.
 *
 * @example assessmentOf(operation, operationsOf(file), theCase)?.body.asa // 'II'
 * Reference: physical status and airway plan belong to each anaesthetic (AAHA 2020 as remembered).
 */
export function assessmentOf(
  operation: OperationOnFile,
  operations: readonly OperationOnFile[],
  theCase: Case,
): Line<BodyOf<'anaesthetic-assessment'>> | null {
  const together = anaestheticOf(operation, operations, theCase)
  const before = operations
    .filter(({ id, done, moment }) => done && moment.at < operation.moment.at && !together.includes(id))
    .at(-1)
  const written = theCase.live('anaesthetic-assessment').filter(({ at }) => at <= operation.moment.at)
  const named =
    written.findLast((line) => isAbout(line, operation.id)) ??
    written.findLast((line) => together.some((id) => isAbout(line, id)))
  const ofAnimal = written.findLast(
    ({ at, header: { subject } }) => subject.kind === 'animal' && at > (before?.moment.at ?? ''),
  )
  return named ?? ofAnimal ?? null
}
