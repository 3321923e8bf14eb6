import type { DoseResult } from '#core/dosing/dose-lines.ts'
import { planAsWritten } from '#core/dosing/plan-as-written.ts'
import { judgedAt, planNow } from '#core/dosing/plan-now.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'

/**
 * The planned lines as a paper of this instant shows them. Of an operation still to come, what waits is judged for the
 * animal of now, with everything given and planned for that day, as on the screen; what was given, and an operation
 * that is over, stand as they were planned.
 *
 * @example judgeForPaper(file, operation, on.at)?.lines[0]?.verdict // 'refused' once the weight is another
 */
export function judgeForPaper(file: CaseFile, operation: string, now: string): DoseResult | null {
  const knowledge = knowledgeOf(file)
  const asPlanned = planAsWritten(file, operation, knowledge)
  const open = operationsOf(file).find(({ id, done }) => id === operation && done === null)
  if (!asPlanned || !open) return asPlanned
  const { lines, findings, ceilings } = planNow(file, open, judgedAt(file.theCase, now), knowledge)
  const waiting = new Map(lines.map((line) => [line.entry.body.line, line.now]))
  return { lines: asPlanned.lines.map((line) => waiting.get(line.id) ?? line), findings, ceilings }
}
