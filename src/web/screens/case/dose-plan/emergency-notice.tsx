import { Link } from 'wouter'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { emergencyAt } from '#core/dosing/emergency-on-file.ts'
import { judgedAt } from '#core/dosing/plan-now.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'
import { Notice } from '../../../design/notice.tsx'
import { useMinute } from '../../../journal/use-minute.ts'
import { useWho } from '../../../session/use-who.ts'
import { writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'

const words = dosePlanInEnglish.emergency

/** Who declared an emergency and why, as long as it lifts blocks; else the way to declare one. */
export function EmergencyNotice({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const { me } = useWho()
  const minute = useMinute()
  const emergency = emergencyAt(file, operation.id, judgedAt(file.theCase, minute), knowledgeOf(file).rules)
  if (emergency) {
    const { by, reason, at = '' } = emergency
    return (
      <Notice tone="warn" title={words.title}>
        <p>{fill(words.said, { by, at, reason })}</p>
      </Notice>
    )
  }
  if (!mayWrite['emergency-declared'].some((role) => role === me.role)) return null
  const subject = { kind: 'operation', animal: animalIn(file), operation: operation.id } as const
  return (
    <p data-screen-only>
      <Link href={writeHref(id, 'emergency-declared', { subject })}>{words.declare}</Link>
    </p>
  )
}
