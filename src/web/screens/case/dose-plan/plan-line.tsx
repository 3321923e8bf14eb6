import { useState } from 'react'
import { Link } from 'wouter'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { routeWords } from '#content/wording/app-form-words.ts'
import { doseSheetWords } from '#content/wording/papers-dose.ts'
import { linesOfOperation } from '#core/dosing/from-journal.ts'
import type { LineNow } from '#core/dosing/plan-now.ts'
import type { DoseLine } from '#core/dosing/request.ts'
import { sayVoided } from '#core/dosing/second-check.ts'
import { authorNamed, type CaseFile, personNamed } from '#core/journal/clinic.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { plain } from '#core/units/quantity.ts'
import { sayAmount } from '#core/why/why.ts'
import { whyDose } from '#core/why/why-dose.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { sayWhen } from '../../../design/say-when.ts'
import { Why } from '../../../design/why.tsx'
import { useWho } from '../../../session/use-who.ts'
import { entryHref, planLineHref, withdrawHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { sayOld } from '../doses.tsx'
import { beyondWeight } from '../dosing.ts'
import { FindingList } from '../finding-list.tsx'
import styles from './dose-plan.module.css'
import { GivePart } from './give-part.tsx'
import { LineSteps } from './line-steps.tsx'
import { sayDelivered, sayTake } from './say-line.ts'

const words = dosePlanInEnglish.line
const uses: Readonly<Record<string, string>> = doseSheetWords.uses
const routes: Readonly<Record<string, string>> = routeWords

/** One line of the plan: what it is for, what is given, why it is allowed here, what to draw, who checked it. */
export function PlanLine({ line, operation }: { readonly line: LineNow; readonly operation: OperationOnFile }) {
  const { file } = useCaseView()
  const { entry, now, given } = line
  const { body } = entry
  const drug = drugName(body.drug)
  const found = beyondWeight(now?.findings ?? [])
  const route = body.route === null ? null : (routes[body.route] ?? body.route)
  return (
    <li className={styles.line} data-verdict={now?.verdict ?? 'none'}>
      <div className="stack-s">
        <p className={styles.purpose}>{uses[body.use] ?? body.use}</p>
        <h2 className={styles.drug}>
          {drug} <span className={styles.route}>{[route, body.qualifier, body.line].filter(Boolean).join(', ')}</span>
        </h2>
        <p className="soft">
          {fill(words.because, { because: body.because })}
          {body.plan !== null && ` (${fill(words.plan, { plan: body.plan })})`}
        </p>
        {now?.range && <p className="soft">{sayAllowed(now.range)}</p>}
      </div>
      <div className="stack-s">
        {given.length > 0 ? (
          given.map((one) => (
            <p key={one.header.id}>
              <strong>
                {fill(words.given, {
                  amount: sayAmount(fromStored(one.body.amount)),
                  when: sayWhen(one.at, file.clinic.zone),
                  who: authorNamed(file, one.header.author),
                })}
              </strong>
            </p>
          ))
        ) : now ? (
          <Drawing line={line} now={now} />
        ) : (
          <p>{words.gone}</p>
        )}
        {line.ceilingAfter && <p>{fill(words.ceiling, { share: plain(line.ceilingAfter.toDecimalPlaces(3, 2)) })}</p>}
        <p className={styles.state} data-state={line.check.kind}>
          {sayCheck(line, file)}
        </p>
      </div>
      {found.length > 0 && (
        <div className={styles.wide}>
          <FindingList findings={found} />
        </div>
      )}
      <Acts line={line} operation={operation} />
    </li>
  )
}

function sayAllowed({ low, high }: NonNullable<DoseLine['range']>): string {
  if (low.value.eq(high.value)) return fill(words.allowedOne, { low: sayAmount(low) })
  return fill(words.allowed, { low: sayAmount(low), high: sayAmount(high) })
}

/** The strength it is drawn from, or the tablet it is counted in. */
function sayFrom({ stock, how }: LineNow['entry']['body']): string {
  if (how?.tablet) return fill(words.tablet, { strength: sayAmount(fromStored(how.tablet.strength)) })
  return stock ? fill(words.of, { strength: sayAmount(fromStored(stock)) }) : ''
}

function Drawing({ line, now }: { readonly line: LineNow; readonly now: DoseLine }) {
  const { file, id } = useCaseView()
  const { entry } = line
  const { subject } = entry.header
  const operation = subject.kind === 'operation' ? subject.operation : ''
  const planned = linesOfOperation(file.theCase, operation).lines
  const asked = planned.find((one) => one.id === now.id) ?? null
  const named = planned.map((one) => ({ id: one.id, drug: drugName(one.drug) }))
  const weight = file.theCase.latest('weight')?.header.id ?? null
  const drug = drugName(entry.body.drug)
  return (
    <>
      {now.verdict === 'refused' ? (
        <p className={`${styles.draw} ${styles.stop}`}>{words.refused}</p>
      ) : (
        <>
          <p className={styles.draw}>
            {sayTake(now)} <small>{sayFrom(entry.body)}</small>
          </p>
          <p>{sayDelivered(now)}</p>
          <LineSteps now={now} lines={named} />
        </>
      )}
      {line.isOld && <p className={styles.stop}>{sayOld(entry.body, now)}</p>}
      <p data-screen-only>
        <Why
          about={`${drug}, ${entry.body.line}`}
          make={() => whyDose(now, { asked, drugName: drug, weightLine: weight })}
          nameOf={(person) => (file.people.has(person) ? personNamed(file, person) : person)}
          hrefOf={(one) => entryHref(id, one)}
          findings={<FindingList findings={now.findings} />}
        />
      </p>
    </>
  )
}

/** How a line stands with the second person, in a sentence. */
function sayCheck({ check }: LineNow, file: CaseFile): string {
  const { check: says } = dosePlanInEnglish
  if (check.kind === 'none') return says.none
  const about = {
    who: authorNamed(file, check.check.header.author),
    when: sayWhen(check.check.at, file.clinic.zone),
    text: check.check.body.text ?? '',
    because: check.kind === 'void' ? sayVoided(check.because, doseSheetWords.secondVoidBecause) : '',
  }
  return fill(says[check.kind], about)
}

function Acts({ line, operation }: { readonly line: LineNow; readonly operation: OperationOnFile }) {
  const { id } = useCaseView()
  const { me } = useWho()
  const [giving, setGiving] = useState(false)
  const mayPlan = mayWrite['planned-line'].some((role) => role === me.role)
  const mayGive = mayWrite['drug-given'].some((role) => role === me.role)
  const { header, body } = line.entry
  const said = <span className="said"> {`${drugName(body.drug)}, ${body.line}`}</span>
  const isOpen = line.given.length === 0
  return (
    <div className={`${styles.wide} ${styles.acts}`} data-screen-only>
      {mayGive && isOpen && (
        <button type="button" onClick={() => setGiving(true)}>
          {words.give}
          {said}
        </button>
      )}
      {mayPlan && isOpen && operation.done === null && (
        <Link href={planLineHref(id, operation.id, body.line)}>
          {words.change}
          {said}
        </Link>
      )}
      {mayPlan && isOpen && (
        <Link href={withdrawHref(id, header.id)}>
          {words.takeOut}
          {said}
        </Link>
      )}
      {giving && <GivePart line={line} onClose={() => setGiving(false)} />}
    </div>
  )
}
