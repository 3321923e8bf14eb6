import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { routeWords } from '#content/wording/app-form-words.ts'
import { usesInEnglish } from '#content/wording/app-formulary.ts'
import { howInEnglish } from '#content/wording/app-how.ts'
import { usualPlanInEnglish as words } from '#content/wording/app-plan.ts'
import { storedHow } from '#core/dosing/how-given.ts'
import type { JudgedPlanLine } from '#core/dosing/plan-for-operation.ts'
import { personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import { sayAmount } from '#core/why/why.ts'
import { whyDose } from '#core/why/why-dose.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { sayHow } from '#documents/case/say-how.ts'
import { Field } from '../../../design/field.tsx'
import { Why } from '../../../design/why.tsx'
import { entryHref, writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { LineSteps } from '../dose-plan/line-steps.tsx'
import { sayDraw } from '../doses.tsx'
import { FindingList } from '../finding-list.tsx'
import { asksReason } from '../line-reason.ts'
import styles from './plan.module.css'

/** One line of the plan as it would be written, or why it is not, and what would make it possible. */
export function PlanLine(props: {
  readonly judged: JudgedPlanLine
  readonly operation: string
  /** All lines of the plan by name: some share a bag. */
  readonly lines: readonly { readonly id: string; readonly drug: string }[]
  /** False while no weight is on record: a planned line names its weight. */
  readonly canWrite: boolean
  readonly taken: boolean
  readonly reason: string
  readonly error: string | null
  readonly onTake: (taken: boolean) => void
  readonly onReason: (reason: string) => void
}) {
  const { judged, taken } = props
  const { file, id } = useCaseView()
  const { line, asked, chosen, already } = judged
  const how = sayHow(storedHow(asked))
  const drug = drugName(line.drug)
  const heading = `line-${line.id}`
  const refused = line.verdict === 'refused'
  const strength = asked.stock ?? asked.tablet?.strength
  return (
    <li className={styles.line} data-verdict={already ? 'already' : line.verdict} aria-labelledby={heading}>
      <h2 id={heading}>
        {drug} <span className={styles.name}>{line.id}</span>
      </h2>
      <p className="soft">
        {[usesInEnglish[line.use], line.route && routeWords[line.route], asked.qualifier].filter(Boolean).join(', ')}
      </p>
      <dl className={styles.figures}>
        <dt>{words.dose}</dt>
        <dd className={styles.amount}>{sayAmount(chosen.dose)}</dd>
        {!refused && (
          <>
            <dt>{words.amount}</dt>
            <dd className={styles.amount}>{sayAmount(line.amount)}</dd>
          </>
        )}
        <dt>{words.strength}</dt>
        <dd>{strength ? sayAmount(strength) : words.noStrength}</dd>
        <dt>{words.draw}</dt>
        <dd className={refused ? undefined : styles.amount}>{sayDraw(line)}</dd>
        {how.length > 0 && (
          <>
            <dt>{howInEnglish.legend}</dt>
            <dd>{how.join('; ')}</dd>
          </>
        )}
        <dt>{words.why}</dt>
        <dd>
          {fill(words.because, {
            because: chosen.reason,
            who: personNamed(file, chosen.person),
            day: sayCalendarDay(chosen.date),
          })}
        </dd>
        <dt>{words.check}</dt>
        <dd>
          {caseInEnglish.doses.verdicts[line.verdict]}{' '}
          <Why
            about={drug}
            make={() => whyDose(line, { asked, drugName: drug, weightLine: null })}
            nameOf={(person) => (file.people.has(person) ? personNamed(file, person) : person)}
            hrefOf={(one) => entryHref(id, one)}
            findings={<FindingList findings={line.findings} />}
          />
        </dd>
      </dl>
      {!refused && <LineSteps now={line} lines={props.lines} />}
      <FindingList findings={line.findings} />
      {already ? (
        <p>
          {words.already} <Link href={entryHref(id, already.header.id)}>{words.alreadyLink}</Link>
        </p>
      ) : refused ? (
        <RefusedPart operation={props.operation} />
      ) : props.canWrite ? (
        <>
          <label className={styles.take}>
            <input type="checkbox" checked={taken} onChange={(event) => props.onTake(event.target.checked)} />
            {fill(words.take, { line: line.id })}
          </label>
          {taken && asksReason(judged.line) && (
            <Field label={words.insist} help={words.insistHelp} error={props.error}>
              {(control) => (
                <textarea
                  {...control}
                  rows={2}
                  value={props.reason}
                  onChange={(event) => props.onReason(event.target.value)}
                />
              )}
            </Field>
          )}
        </>
      ) : null}
    </li>
  )
}

function RefusedPart({ operation }: { readonly operation: string }) {
  const { id } = useCaseView()
  const subject = { kind: 'operation', animal: '', operation } as const
  return (
    <p>
      <strong>{words.refused}</strong> {words.refusedHelp}{' '}
      <Link href={writeHref(id, 'planned-line', { subject })}>{words.byHand}</Link>
    </p>
  )
}
