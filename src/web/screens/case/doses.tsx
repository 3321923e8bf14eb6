import { Link } from 'wouter'
import { formulary } from '#content/formulary/index.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { doseSheetWords } from '#content/wording/papers-dose.ts'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import { linesOfOperation } from '#core/dosing/from-journal.ts'
import { inPlanOrder } from '#core/dosing/in-plan-order.ts'
import type { DoseLine } from '#core/dosing/request.ts'
import { drugById } from '#core/formulary/drug.ts'
import { personNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { plain } from '#core/units/quantity.ts'
import { sayAmount } from '#core/why/why.ts'
import { whyCeiling, whyDose } from '#core/why/why-dose.ts'
import { Caution } from '../../design/caution.tsx'
import { Notice } from '../../design/notice.tsx'
import { ScrollBox } from '../../design/scroll-box.tsx'
import { Why } from '../../design/why.tsx'
import { dosePlanHref } from './case-hrefs.ts'
import { library, useCaseView } from './case-view.ts'
import { dosesOf } from './dosing.ts'
import { FindingList } from './finding-list.tsx'
import styles from './panels.module.css'

const words = caseInEnglish.doses
type Planned = Line<BodyOf<'planned-line'>>

/** The dose plan of one operation as the engine judges it now: plan first, and beside every number why. */
export function Doses({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const planned = file.theCase
    .live('planned-line')
    .filter(({ header: { subject } }) => subject.kind === 'operation' && subject.operation === operation.id)
  if (planned.length === 0) return null
  const doses = dosesOf(file, operation.id)
  const about = saySubject({ kind: 'operation', animal: '', operation: operation.id }, file, library)
  return (
    <details className={styles.opener} open={operation.done === null}>
      <summary>
        <span>{fill(words.title, { operation: about })}</span>
      </summary>
      <div className={styles.panel}>
        <p data-screen-only>
          <Link href={dosePlanHref(id, operation.id)}>{dosePlanInEnglish.open}</Link>
        </p>
        {doses ? (
          <>
            <p className="soft">{words.worked}</p>
            <FindingList findings={doses.findings} />
            <ScrollBox label={fill(words.title, { operation: about })}>
              <PlanTable doses={doses} planned={inPlanOrder(planned, file.house)} />
            </ScrollBox>
            <Ceilings ceilings={doses.ceilings} />
          </>
        ) : (
          <Notice tone="warn">
            <p>{words.noAnimal}</p>
          </Notice>
        )}
        <Caution />
      </div>
    </details>
  )
}

function PlanTable({ doses, planned }: { readonly doses: DoseResult; readonly planned: readonly Planned[] }) {
  const { columns } = words
  return (
    <table className={styles.plan}>
      <thead>
        <tr>
          {Object.values(columns).map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {planned.map((entry) => {
          const line = doses.lines.find(({ id }) => id === entry.body.line)
          return line ? <PlanRows key={entry.header.id} line={line} entry={entry} /> : null
        })}
      </tbody>
    </table>
  )
}

function PlanRows({ line, entry }: { readonly line: DoseLine; readonly entry: Planned }) {
  const drug = drugById(formulary, line.drug)?.name ?? line.drug
  const uses: Readonly<Record<string, string>> = doseSheetWords.uses
  const { id } = entry.header
  const serious = line.findings.filter(({ level }) => level !== 'note')
  return (
    <>
      <tr data-verdict={line.verdict}>
        <th scope="row">
          <a href={`#entry-${id}`}>{drug}</a>
          <span className={styles.use}>{uses[line.use] ?? line.use}</span>
        </th>
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
      {serious.length > 0 && (
        <tr>
          <td colSpan={4}>
            <FindingList findings={serious} />
          </td>
        </tr>
      )}
    </>
  )
}

/** Why one line of a plan is what it is, or why it is refused. */
function WhyLine({ line, entry }: { readonly line: DoseLine; readonly entry: Planned }) {
  const { file } = useCaseView()
  const drug = drugById(formulary, line.drug)?.name ?? line.drug
  const operation = operationOf(entry)
  const asked = linesOfOperation(file.theCase, operation).lines.find((one) => one.id === line.id) ?? null
  return (
    <Why
      about={drug}
      make={() => whyDose(line, { asked, drugName: drug, weightLine: weightBefore(file.theCase, operation) })}
      nameOf={(person) => (file.people.has(person) ? personNamed(file, person) : person)}
      hrefOf={(one) => `#entry-${one}`}
      findings={<FindingList findings={line.findings} />}
    />
  )
}

/** One planned line by itself, as the check sees it now, for its own entry. */
export function JudgedLine({ entry }: { readonly entry: Planned }) {
  const { file } = useCaseView()
  const line = dosesOf(file, operationOf(entry))?.lines.find(({ id }) => id === entry.body.line)
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

/** The entry of the weight the lines were worked out with. */
function weightBefore(theCase: Parameters<typeof linesOfOperation>[0], operation: string): string | null {
  const { at } = linesOfOperation(theCase, operation)
  return theCase.live('weight').findLast((line) => at !== undefined && line.at <= at)?.header.id ?? null
}

/** What to draw up. A refused line has no volume, so that nobody draws from it. */
export function sayDraw(line: DoseLine): string {
  if (line.verdict === 'refused') return words.refusedDraw
  const { drawn, volume, tablets, rate, dilution } = line
  if (dilution) return sayAmount(dilution.drawn)
  if (rate) return sayAmount(rate)
  if (tablets) return sayAmount(tablets.each)
  const shown = drawn ?? volume
  return shown ? sayAmount(shown) : words.notDrawn
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
