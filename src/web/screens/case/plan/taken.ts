import { usualPlanInEnglish as words } from '#content/wording/app-plan.ts'
import type { JudgedPlan, JudgedPlanLine } from '#core/dosing/plan-for-operation.ts'
import { plannedBody } from '#core/dosing/planned-body.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'

/** What somebody chose on the page; a line that nobody touched is written unless the check asks for a reason. */
export type Choosing = {
  readonly plan: string | null
  readonly taken: Readonly<Record<string, boolean>>
  readonly reasons: Readonly<Record<string, string>>
}
export const nothingChosen = (): Choosing => ({ plan: null, taken: {}, reasons: {} })

/** The most characters that the reason of a planned line holds. */
const longest = 300

export function asksConfirm({ line }: JudgedPlanLine): boolean {
  return line.findings.some(({ level }) => level === 'confirm')
}

/** Whether a line can be written at all: allowed by the check, worked out with a weight, and not planned already. */
export function isOpen(judged: JudgedPlanLine, { weight }: JudgedPlan): boolean {
  return judged.line.verdict !== 'refused' && judged.already === null && weight !== null
}

export function isTaken(judged: JudgedPlanLine, plan: JudgedPlan, choosing: Choosing): boolean {
  return isOpen(judged, plan) && (choosing.taken[judged.line.id] ?? !asksConfirm(judged))
}

/** What stands in the way of one line that is to be written. */
export function faultOf(judged: JudgedPlanLine, { reasons }: Choosing): string | null {
  if (!asksConfirm(judged)) return null
  const reason = (reasons[judged.line.id] ?? '').trim()
  if (reason === '') return words.insistMissing
  const over = becauseOf(judged, reason).length - longest
  return over > 0 ? fill(words.insistLong, { most: String(Math.max(0, reason.length - over)) }) : null
}

function becauseOf({ chosen }: JudgedPlanLine, reason: string): string {
  return reason === '' ? chosen.reason : fill(words.although, { because: chosen.reason, reason })
}

/** The bodies of every line that is to be written, in the order of the plan. */
export function bodiesOf(plan: JudgedPlan, choosing: Choosing): BodyOf<'planned-line'>[] {
  const { weight } = plan
  if (!weight) return []
  return plan.lines.flatMap((judged) => {
    const { line, asked } = judged
    if (line.verdict === 'refused' || !isTaken(judged, plan, choosing)) return []
    const reason = asksConfirm(judged) ? (choosing.reasons[line.id] ?? '').trim() : ''
    return [plannedBody(line, { asked, because: becauseOf(judged, reason), plan: plan.plan.name, weight })]
  })
}
