import type { JudgedPlan, JudgedPlanLine } from '#core/dosing/plan-for-operation.ts'
import { plannedBody } from '#core/dosing/planned-body.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { asksReason, becauseOf, reasonFault } from '../line-reason.ts'

/** What somebody chose on the page; a line that nobody touched is written unless the check asks for a reason. */
export type Choosing = {
  readonly plan: string | null
  readonly taken: Readonly<Record<string, boolean>>
  readonly reasons: Readonly<Record<string, string>>
}
export const nothingChosen = (): Choosing => ({ plan: null, taken: {}, reasons: {} })

/** Whether a line can be written at all: allowed by the check, worked out with a weight, and not planned already. */
export function isOpen(judged: JudgedPlanLine, { weight }: JudgedPlan): boolean {
  return judged.line.verdict !== 'refused' && judged.already === null && weight !== null
}

export function isTaken(judged: JudgedPlanLine, plan: JudgedPlan, choosing: Choosing): boolean {
  return isOpen(judged, plan) && (choosing.taken[judged.line.id] ?? !asksReason(judged.line))
}

/** What stands in the way of one line that is to be written. */
export function faultOf({ line, chosen }: JudgedPlanLine, { reasons }: Choosing): string | null {
  return reasonFault(line, chosen.reason, reasons[line.id] ?? '')
}

/** The bodies of every line that is to be written, in the order of the plan. */
export function bodiesOf(plan: JudgedPlan, choosing: Choosing): BodyOf<'planned-line'>[] {
  const { weight } = plan
  if (!weight) return []
  return plan.lines.flatMap((judged) => {
    const { line, asked, chosen } = judged
    if (line.verdict === 'refused' || !isTaken(judged, plan, choosing)) return []
    const because = becauseOf(chosen.reason, asksReason(line) ? (choosing.reasons[line.id] ?? '') : '')
    const around = { asked, because, plan: plan.plan.name, shelfItem: chosen.shelfItem ?? null, weight }
    return [plannedBody(line, around)]
  })
}
