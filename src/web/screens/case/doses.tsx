import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { doseSheetWords } from '#content/wording/papers-dose.ts'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import { linesOfOperation } from '#core/dosing/from-journal.ts'
import { inPlanOrder } from '#core/dosing/in-plan-order.ts'
import type { LineNow } from '#core/dosing/plan-now.ts'
import type { DoseLine } from '#core/dosing/request.ts'
import { personNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { plain } from '#core/units/quantity.ts'
import { sayAmount } from '#core/why/why.ts'
import { whyCeiling, whyDose } from '#core/why/why-dose.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { Caution } from '../../design/caution.tsx'
import { Notice } from '../../design/notice.tsx'
import { ScrollBox } from '../../design/scroll-box.tsx'
import { Why } from '../../design/why.tsx'
import { useMinute } from '../../journal/use-minute.ts'
import { dosePlanHref } from './case-hrefs.ts'
import { library, useCaseView } from './case-view.ts'
import { beyondWeight, dosesOf, planInMinute } from './dosing.ts'
import { FindingList } from './finding-list.tsx'
import styles from './panels.module.css'

const words = caseInEnglish.doses
type Planned = Line<BodyOf<'planned-line'>>

/** The dose plan of one operation: as it stands now while it waits, as it was planned once the operation is over. */
export function Doses({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const planned = linesAbout(file.theCase, 'planned-line', operation.id)
  if (planned.length === 0) return null
  const about = saySubject({ kind: 'operation', animal: '', operation: operation.id }, file, library)
  const title = fill(words.title, { operation: about })
  return (
    <details className={styles.opener} open={operation.done === null}>
      <summary>
        <span>{title}</span>
      </summary>
      <div className={styles.panel}>
        <p data-screen-only>
          <Link href={dosePlanHref(id, operation.id)}>{dosePlanInEnglish.open}</Link>
        </p>
        {operation.done === null ? (
          <Waiting operation={operation} title={title} />
        ) : (
          <Over operation={operation} planned={planned} title={title} />
        )}
        <Caution />
      </div>
    </details>
  )
}

/** Judged now and together with the other operations of the day, exactly as on the page of the plan. */
function Waiting({ operation, title }: { readonly operation: OperationOnFile; readonly title: string }) {
  const { file } = useCaseView()
  const plan = planInMinute(file, operation, useMinute())
  if (!plan.animal) return <NoAnimal />
  return (
    <>
      <p className="soft">{words.workedNow}</p>
      <FindingList findings={plan.findings} />
      <ScrollBox label={title}>
        <PlanTable>
          {plan.lines.map((one) => (
            <RowsNow key={one.entry.header.id} one={one} />
          ))}
        </PlanTable>
      </ScrollBox>
      <Ceilings ceilings={plan.ceilings} />
    </>
  )
}

function Over(props: {
  readonly operation: OperationOnFile
  readonly planned: readonly Planned[]
  readonly title: string
}) {
  const { operation, planned, title } = props
  const { file } = useCaseView()
  const doses = dosesOf(file, operation.id)
  if (!doses) return <NoAnimal />
  return (
    <>
      <p className="soft">{words.worked}</p>
      <FindingList findings={doses.findings} />
      <ScrollBox label={title}>
        <PlanTable>
          {inPlanOrder(planned, file.house).map((entry) => {
            const line = doses.lines.find(({ id }) => id === entry.body.line)
            return line ? <PlanRows key={entry.header.id} line={line} entry={entry} findings={line.findings} /> : null
          })}
        </PlanTable>
      </ScrollBox>
      <Ceilings ceilings={doses.ceilings} />
    </>
  )
}

function NoAnimal() {
  return (
    <Notice tone="warn">
      <p>{words.noAnimal}</p>
    </Notice>
  )
}

function PlanTable({ children }: { readonly children: ReactNode }) {
  return (
    <table className={styles.plan}>
      <thead>
        <tr>
          {Object.values(words.columns).map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>{children}</tbody>
    </table>
  )
}

/** One line as it stands now: what waits is judged, what was given stands as given. */
function RowsNow({ one }: { readonly one: LineNow }) {
  const { entry, now, given } = one
  if (now && given.length === 0) {
    const old = one.isOld ? sayOld(entry.body, now) : null
    return <PlanRows line={now} entry={entry} findings={beyondWeight(now.findings)} old={old} />
  }
  const amounts = given.map(({ body }) => fill(words.givenAmount, { amount: sayAmount(fromStored(body.amount)) }))
  return (
    <tr>
      <LineName entry={entry} />
      <td className={entry.body.dose ? styles.amount : undefined}>
        {entry.body.dose ? sayAmount(fromStored(entry.body.dose)) : caseInEnglish.pair.notKnown}
      </td>
      <td colSpan={2}>{amounts.length > 0 ? amounts.join('; ') : dosePlanInEnglish.line.gone}</td>
    </tr>
  )
}

function LineName({ entry: { header, body } }: { readonly entry: Planned }) {
  const uses: Readonly<Record<string, string>> = doseSheetWords.uses
  return (
    <th scope="row">
      <a href={`#entry-${header.id}`}>{drugName(body.drug)}</a>
      <span className={styles.use}>{uses[body.use] ?? body.use}</span>
    </th>
  )
}

function PlanRows(props: {
  readonly line: DoseLine
  readonly entry: Planned
  readonly findings: DoseLine['findings']
  /** That something else was written than would be drawn now. */
  readonly old?: string | null
}) {
  const { line, entry, findings, old = null } = props
  const serious = findings.filter(({ level }) => level !== 'note')
  return (
    <>
      <tr data-verdict={line.verdict}>
        <LineName entry={entry} />
        <td className={line.dose ? styles.amount : undefined}>
          {line.dose ? sayAmount(line.dose) : caseInEnglish.pair.notKnown}
        </td>
        <td className={styles.draw}>
          <span className={isDrawn(line) ? styles.amount : undefined}>{sayDraw(line)}</span>
        </td>
        <td>
          {words.verdicts[line.verdict]}
          <span className={styles.why} data-screen-only>
            <WhyLine line={line} entry={entry} />
          </span>
        </td>
      </tr>
      {(serious.length > 0 || old !== null) && (
        <tr>
          <td colSpan={4}>
            {old !== null && <p className={styles.old}>{old}</p>}
            <FindingList findings={serious} />
          </td>
        </tr>
      )}
    </>
  )
}

/** Why one line of a plan is what it is, or why it is refused. */
function WhyLine({ line, entry }: { readonly line: DoseLine; readonly entry: Planned }) {
  const { file, operations } = useCaseView()
  const drug = drugName(line.drug)
  const operation = operationOf(entry)
  const isOver = operations.find(({ id }) => id === operation)?.done !== null
  const newest = file.theCase.latest('weight')?.header.id ?? null
  const weightLine = isOver ? weightBefore(file.theCase, operation) : newest
  const asked = linesOfOperation(file.theCase, operation).lines.find((one) => one.id === line.id) ?? null
  return (
    <Why
      about={drug}
      make={() => whyDose(line, { asked, drugName: drug, weightLine })}
      nameOf={(person) => (file.people.has(person) ? personNamed(file, person) : person)}
      hrefOf={(one) => `#entry-${one}`}
      findings={<FindingList findings={line.findings} />}
    />
  )
}

/** One planned line by itself, as the check sees it now, for its own entry; nothing once it was given. */
export function JudgedLine({ entry }: { readonly entry: Planned }) {
  const { file, operations } = useCaseView()
  const minute = useMinute()
  const waiting = operations.find(({ id, done }) => id === operationOf(entry) && done === null)
  const line = waiting
    ? planInMinute(file, waiting, minute).lines.find((one) => one.entry.header.id === entry.header.id)?.now
    : dosesOf(file, operationOf(entry))?.lines.find(({ id }) => id === entry.body.line)
  if (!line) return null
  return (
    <div className="stack">
      <p className={styles.figure}>
        <span>{fill(words.now, { draw: sayDraw(line), verdict: words.verdicts[line.verdict] })}</span>
        <WhyLine line={line} entry={entry} />
      </p>
      <FindingList findings={line.findings} />
      <Caution />
    </div>
  )
}

function operationOf({ header: { subject } }: Planned): string {
  return subject.kind === 'operation' ? subject.operation : ''
}

/** The entry of the weight that the lines of an operation that is over were worked out with. */
function weightBefore(theCase: Parameters<typeof linesOfOperation>[0], operation: string): string | null {
  const { at } = linesOfOperation(theCase, operation)
  return theCase.live('weight').findLast((line) => at !== undefined && line.at <= at)?.header.id ?? null
}

/** What to draw up, and how fast the pump runs. A refused line has no volume, so that nobody draws from it. */
export function sayDraw(line: DoseLine): string {
  if (line.verdict === 'refused') return words.refusedDraw
  const { drawn, volume, tablets, rate, dilution, poured } = line
  if (tablets) return sayAmount(tablets.each)
  const taken = dilution?.drawn ?? drawn ?? volume
  if (!taken) return rate ? sayAmount(rate) : words.notDrawn
  if (!rate) return sayAmount(taken)
  return fill(poured ? words.into[poured.container.kind] : words.overTime, {
    drawn: sayAmount(taken),
    rate: sayAmount(rate),
  })
}

/** What was written down to be drawn up, said like what would be drawn now. */
function sayWritten({ drawn, amount, worked, how }: BodyOf<'planned-line'>): string {
  if (worked?.tablets) return sayAmount(fromStored(worked.tablets))
  const rate = worked?.rate ? sayAmount(fromStored(worked.rate)) : null
  if (!drawn) return rate ?? sayAmount(fromStored(amount))
  const taken = sayAmount(fromStored(drawn))
  if (rate === null) return taken
  return fill(how?.container ? words.into[how.container.kind] : words.overTime, { drawn: taken, rate })
}

/** That a line would be drawn otherwise now than it was written. */
export function sayOld(body: BodyOf<'planned-line'>, now: DoseLine): string {
  const { old, oldRefused, oldBeside } = dosePlanInEnglish.line
  const about = { was: sayWritten(body), now: sayDraw(now) }
  if (now.verdict === 'refused') return fill(oldRefused, about)
  return about.was === about.now ? oldBeside : fill(old, about)
}

/** Whether there is an amount in what is said to draw up, rather than words alone. */
export function isDrawn(line: DoseLine): boolean {
  if (line.verdict === 'refused') return false
  return Boolean(line.dilution ?? line.rate ?? line.tablets ?? line.drawn ?? line.volume)
}

export function Ceilings({ ceilings }: { readonly ceilings: DoseResult['ceilings'] }) {
  return ceilings.map((ceiling) => {
    const share = (value: typeof ceiling.used) => plain(value.toDecimalPlaces(3, 2))
    const about = { granted: share(ceiling.granted), limit: share(ceiling.limit) }
    return (
      <p key={about.limit} className={styles.figure}>
        <span>
          {words.ceiling}: <strong>{fill(doseSheetWords.ceiling, about)}</strong>
        </span>
        <Why about={words.ceiling} make={() => whyCeiling(ceiling)} />
      </p>
    )
  })
}
