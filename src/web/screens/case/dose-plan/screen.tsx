import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { dosePlanInEnglish as words } from '#content/wording/app-dose-plan.ts'
import { isOfEmergency } from '#core/dosing/emergency-declared.ts'
import type { PlanNow } from '#core/dosing/plan-now.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { sayMoment } from '#core/time/moment.ts'
import { Caution } from '../../../design/caution.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { useMinute } from '../../../journal/use-minute.ts'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, planLineHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { Ceilings } from '../doses.tsx'
import { planAt, planInMinute } from '../dosing.ts'
import { FindingList } from '../finding-list.tsx'
import { PlanLink } from '../plan-link.tsx'
import { useOperationHere } from '../use-operation-here.ts'
import { WithCase } from '../with-case.tsx'
import styles from './dose-plan.module.css'
import { EmergencyNotice } from './emergency-notice.tsx'
import { PlanHead } from './plan-head.tsx'
import { PlanLine } from './plan-line.tsx'
import { PlanPapers } from './plan-papers.tsx'
import { ReplanAll } from './replan-all.tsx'
import { SecondPart } from './second-part.tsx'

/** The plan of one operation: purpose, drug, why it is allowed, what to draw; who checked it; what was given. */
export default function DosePlanScreen() {
  return (
    <WithCase>
      <DosePlan />
    </WithCase>
  )
}

function DosePlan() {
  const { operation, subject } = useOperationHere()
  const { id } = useCaseView()
  return (
    <Page title={words.title} lead={<p>{words.lead}</p>} whose={<CaseLine about={subject} />} wide>
      {operation ? <Plan operation={operation} /> : <p>{words.noOperation}</p>}
      <p data-screen-only>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

function Plan({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const minute = useMinute()
  // An operation that is over is judged as it stood when it began: what was given is written beside it.
  const over = operation.done?.moment.at
  const plan = over === undefined ? planInMinute(file, operation, minute) : planAt(file, operation, over)
  if (!plan.animal) {
    return (
      <Notice tone="warn" title={words.noAnimal}>
        <p>
          <Link href={writeHref(id, 'identity')}>{words.toIdentity}</Link>
        </p>
      </Notice>
    )
  }
  return (
    <>
      {operation.done && (
        <Notice>
          <p>{fill(words.over, { when: sayMoment(operation.done.moment) })}</p>
        </Notice>
      )}
      <PlanHead operation={operation} />
      <EmergencyNotice operation={operation} plan={plan} />
      <FindingList findings={plan.findings.filter((finding) => !isOfEmergency(finding))} />
      {!operation.done && <ReplanAll operation={operation} plan={plan} />}
      <Lines operation={operation} plan={plan} />
      <h2>{words.ceilings}</h2>
      {plan.ceilings.length === 0 ? <p>{words.noCeiling}</p> : <Ceilings ceilings={plan.ceilings} />}
      <Caution />
      <SecondPart operation={operation} plan={plan} />
      <PlanPapers operation={operation} plan={plan} />
    </>
  )
}

function Lines({ operation, plan }: { readonly operation: OperationOnFile; readonly plan: PlanNow }) {
  const { id } = useCaseView()
  const { me } = useWho()
  const may = mayWrite['planned-line'].some((role) => role === me.role) && operation.done === null
  return (
    <>
      {plan.lines.length === 0 ? (
        <Notice title={words.empty}>
          <p>{words.emptyHelp}</p>
        </Notice>
      ) : (
        <ol className={styles.lines}>
          {plan.lines.map((line) => (
            <PlanLine key={line.entry.header.id} line={line} operation={operation} />
          ))}
        </ol>
      )}
      {may && (
        <div className={styles.acts} data-screen-only>
          <PlanLink operation={operation.id} />
          <Link href={planLineHref(id, operation.id, null)}>{words.add}</Link>
        </div>
      )}
    </>
  )
}
