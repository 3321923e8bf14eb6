import { Link } from 'wouter'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { isOfEmergency } from '#core/dosing/emergency-declared.ts'
import { emergencyAt } from '#core/dosing/emergency-on-file.ts'
import { judgedAt, type PlanNow } from '#core/dosing/plan-now.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'
import { Notice } from '../../../design/notice.tsx'
import { useMinute } from '../../../journal/use-minute.ts'
import { useWho } from '../../../session/use-who.ts'
import { writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { sayFinding } from '../dosing.ts'

const words = dosePlanInEnglish.emergency

/** Who declared an emergency and why, as long as it lifts blocks; else the way to declare one. */
export function EmergencyNotice(props: { readonly operation: OperationOnFile; readonly plan: PlanNow }) {
  const { operation, plan } = props
  const { file, id } = useCaseView()
  const { me } = useWho()
  const minute = useMinute()
  const emergency = emergencyAt(file, operation.id, judgedAt(file.theCase, minute), knowledgeOf(file).rules)
  if (emergency) {
    const { by, reason, at = '' } = emergency
    const said = plan.findings.filter(isOfEmergency).map(sayFinding)
    // A plan that stands as it was when the operation began knows nothing of an emergency declared since.
    const lines = said.length > 0 ? said : [fill(words.since, { by, reason })]
    return (
      <Notice tone="warn" title={fill(words.title, { at })}>
        {[...lines, words.doubts].map((line) => (
          <p key={line}>{line}</p>
        ))}
      </Notice>
    )
  }
  if (!mayWrite['emergency-declared'].some((role) => role === me.role)) return null
  const subject = aboutOperation(file, operation.id)
  return (
    <p data-screen-only>
      <Link href={writeHref(id, 'emergency-declared', { subject })}>{words.declare}</Link>
    </p>
  )
}
