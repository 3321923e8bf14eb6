import type { CaseFile } from '#core/journal/clinic.ts'
import { type DoseResult, doseLines } from './dose-lines.ts'
import { linesOfOperation } from './from-journal.ts'
import type { DosingKnowledge } from './request.ts'
import { requestOfCase } from './request-of-case.ts'

/**
 * The planned lines of one operation judged again at the moment they were planned, with what the case knew then. Null
 * when the operation has no planned line or the animal is not known.
 *
 * @example planAsWritten(file, operation.id, knowledge)?.lines[0]?.verdict // 'ok'
 */
export function planAsWritten(file: CaseFile, operation: string, knowledge: DosingKnowledge): DoseResult | null {
  const { at, lines } = linesOfOperation(file.theCase, operation)
  const request = at === undefined ? null : requestOfCase(file, { operation, at }, lines, knowledge.rules)
  return request && doseLines(request, knowledge)
}
