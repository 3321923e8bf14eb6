import { type FormEvent, useMemo, useState } from 'react'
import { Link, useLocation, useParams } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { usualPlanInEnglish as words } from '#content/wording/app-plan.ts'
import { shellInEnglish as shell } from '#content/wording/app-shell.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { type JudgedPlan, type PlanRefusal, planForOperation } from '#core/dosing/plan-for-operation.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'
import { Caution } from '../../../design/caution.tsx'
import { Choices } from '../../../design/choices.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { useMinute } from '../../../journal/use-minute.ts'
import { whoWrote } from '../../../journal/who-wrote.ts'
import { makeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, keptHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { Ceilings } from '../doses.tsx'
import { FindingList } from '../finding-list.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'
import styles from './plan.module.css'
import { PlanLine } from './plan-line.tsx'
import { bodiesOf, type Choosing, faultOf, isTaken, nothingChosen } from './taken.ts'

/** One of the house's usual plans becomes the planned lines of one operation, judged for this animal before. */
export default function PlanScreen() {
  return (
    <WithCase>
      <PlanPage />
    </WithCase>
  )
}

function PlanPage() {
  const { operation: wanted = '' } = useParams<{ operation: string }>()
  const { operations, file, id } = useCaseView()
  const { me } = useWho()
  const operation = operations.find((one) => one.id === wanted)
  const writers = writersOf('planned-line')
  const subject = operation && aboutOperation(file, operation.id)
  return (
    <Page title={words.title} whose={<CaseLine about={subject ?? null} />} lead={words.lead}>
      {!operation ? (
        <p>{words.noOperation}</p>
      ) : !writers.includes(me.role) ? (
        <Notice title={fill(words.mayNot, { roles: writers.map((role) => shell.roles[role]).join(', ') })} />
      ) : (
        <Planning operation={operation} />
      )}
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

function Planning({ operation }: { readonly operation: OperationOnFile }) {
  const { file } = useCaseView()
  const { me } = useWho()
  const { draft, change, clear, ready } = useDraft<Choosing>(
    `${file.stream} plan ${operation.id}`,
    me.id,
    nothingChosen,
  )
  const species = file.theCase.latest('identity')?.body.species
  const minute = useMinute()
  const judged = useMemo(
    () =>
      draft.plan === null
        ? null
        : planForOperation(file, { operation: operation.id, plan: draft.plan, at: minute }, knowledgeOf(file)),
    [file, operation.id, draft.plan, minute],
  )
  if (!ready) return null
  if (!species) return <Refused refusal={{ because: 'animal-unknown' }} />
  return (
    <>
      {operation.done && (
        <Notice>
          <p>{words.done}</p>
        </Notice>
      )}
      <WhichPlan
        species={species}
        operation={operation.id}
        chosen={draft.plan}
        onChoose={(plan) => change({ ...nothingChosen(), plan })}
      />
      {judged?.kind === 'refusal' && <Refused refusal={judged.refusal} />}
      {judged?.kind === 'answer' && (
        <Lines plan={judged.answer} operation={operation.id} choosing={draft} onChoosing={change} onKept={clear} />
      )}
    </>
  )
}

function WhichPlan(props: {
  readonly species: 'dog' | 'cat'
  readonly operation: string
  readonly chosen: string | null
  readonly onChoose: (plan: string) => void
}) {
  const { species, chosen, onChoose } = props
  const { file, id } = useCaseView()
  const plans = file.house.live('usual-plan')
  const own = plans.filter(({ body }) => body.species === species)
  const others = plans.filter(({ body }) => body.species !== species).map(({ body }) => body.plan)
  const subject = { kind: 'operation', animal: '', operation: props.operation } as const
  return (
    <>
      {own.length === 0 ? (
        <Notice title={fill(words.none, { species })}>
          <p>{words.noneHelp}</p>
          <p className="row">
            <Link href="/settings/plans">{words.toPlans}</Link>
            <Link href={writeHref(id, 'planned-line', { subject })}>{words.byHand}</Link>
          </p>
        </Notice>
      ) : (
        <Choices
          legend={words.choose}
          value={chosen}
          options={[...new Set(own.map(({ body }) => body.plan))]}
          say={(name) => {
            const line = own.findLast(({ body }) => body.plan === name)
            if (!line) return name
            const lines = sayCount(words.lines, line.body.lines.length)
            return fill(words.chosenBy, { plan: name, lines, ...whoWrote(file, line) })
          }}
          onChoose={onChoose}
        />
      )}
      {others.length > 0 && (
        <p className="soft">{fill(words.others, { species, plans: others.map((one) => `“${one}”`).join(', ') })}</p>
      )}
    </>
  )
}

function Refused({ refusal }: { readonly refusal: PlanRefusal }) {
  const about = refusal.because === 'plan-for-other-species' ? { species: refusal.species, other: refusal.other } : {}
  return (
    <Notice tone="warn">
      <p>{fill(words.refusals[refusal.because], about)}</p>
    </Notice>
  )
}

function Lines(props: {
  readonly plan: JudgedPlan
  readonly operation: string
  readonly choosing: Choosing
  readonly onChoosing: (choosing: Choosing) => void
  readonly onKept: () => Promise<void>
}) {
  const { plan, operation, choosing, onChoosing, onKept } = props
  const { file, id } = useCaseView()
  const { pen } = useWho()
  const [, navigate] = useLocation()
  const [tries, setTries] = useState(0)
  const [keeping, setKeeping] = useState(false)
  const form = useFaultFocus(tries)
  const named = plan.lines.map(({ line }) => ({ id: line.id, drug: drugName(line.drug) }))
  const taken = plan.lines.filter((judged) => isTaken(judged, plan, choosing))
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (taken.length === 0 || taken.some((judged) => faultOf(judged, choosing) !== null)) return
    setKeeping(true)
    const subject = aboutOperation(file, operation)
    const entries = bodiesOf(plan, choosing).map((body) =>
      makeEntry(pen, { kind: 'planned-line', stream: file.stream, subject, body }),
    )
    await keepEntries(entries)
    await onKept()
    navigate(keptHref(id, entries[0]?.id ?? ''))
  }
  return (
    <form ref={form} className={styles.plan} onSubmit={(event) => void keep(event)} noValidate>
      {plan.weight ? (
        <p>{fill(words.weight, { weight: inBothUnits(plan.weight) })}</p>
      ) : (
        <Notice tone="warn" title={words.noWeight}>
          <p>
            <Link href={writeHref(id, 'weight')}>{words.writeWeight}</Link>
          </p>
        </Notice>
      )}
      <FindingList findings={plan.findings} />
      <ol className={`bare ${styles.lines}`}>
        {plan.lines.map((judged) => {
          const { id: line } = judged.line
          return (
            <PlanLine
              key={line}
              judged={judged}
              operation={operation}
              lines={named}
              canWrite={plan.weight !== null}
              taken={isTaken(judged, plan, choosing)}
              reason={choosing.reasons[line] ?? ''}
              error={tries > 0 ? faultOf(judged, choosing) : null}
              onTake={(take) => onChoosing({ ...choosing, taken: { ...choosing.taken, [line]: take } })}
              onReason={(reason) => onChoosing({ ...choosing, reasons: { ...choosing.reasons, [line]: reason } })}
            />
          )
        })}
      </ol>
      <Ceilings ceilings={plan.ceilings} />
      <Caution />
      <p>
        <button type="submit" data-weight="main" disabled={keeping || taken.length === 0}>
          {taken.length === 0 ? words.noLine : sayCount(words.write, taken.length)}
        </button>
      </p>
    </form>
  )
}
