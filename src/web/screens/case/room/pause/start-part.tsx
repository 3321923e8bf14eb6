import { type RefObject, useMemo } from 'react'
import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { pauseInEnglish } from '#content/wording/app-pause.ts'
import { theatreListInEnglish } from '#content/wording/app-theatre-list.ts'
import { boundPlanOf } from '#core/dosing/second-check.ts'
import { contactNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { type TheatreLine, theatreLine } from '#core/theatre/theatre-list.ts'
import { theatreRules } from '#documents/agreement/consent-today.ts'
import { saidFlags } from '#documents/case/said-flags.ts'
import { sayWhen } from '../../../../design/say-when.ts'
import { useMinute } from '../../../../journal/use-minute.ts'
import { dosePlanHref, entryHref, settleHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import { PlanHead } from '../../dose-plan/plan-head.tsx'
import { planAt, planInMinute } from '../../dosing.ts'
import { SidesPart } from '../../sides-part.tsx'
import styles from './pause.module.css'

const words = pauseInEnglish.start

/** What everybody has in view before anything is given: side with its sources, consent, allergies, class, plan. */
export function StartPart(props: {
  readonly operation: OperationOnFile
  readonly heading: RefObject<HTMLHeadingElement | null>
}) {
  const { operation, heading } = props

  const { file, owed, sides } = useCaseView()
  const line = useMemo(() => theatreLine(operation, { file, owed }, theatreRules), [operation, file, owed])
  const flags = saidFlags(file)
  return (
    <section aria-labelledby="pause-start" className="stack">
      <h2 id="pause-start" ref={heading} tabIndex={-1} className={styles.title}>
        {words.title}
      </h2>
      <h3>{words.side}</h3>
      {sides.sources.length === 0 ? <p>{words.noSide}</p> : <SidesPart open />}
      <h3>{words.facts}</h3>
      <dl className={styles.facts}>
        <div>
          <dt>{words.consent}</dt>
          <dd>
            <Consent line={line} />
          </dd>
        </div>
        <div>
          <dt>{caseInEnglish.head.flags}</dt>
          <dd>{flags.length === 0 ? caseInEnglish.head.noFlags : flags.map((flag) => <p key={flag}>{flag}</p>)}</dd>
        </div>
        <div>
          <dt>{words.plan}</dt>
          <dd>
            <Doses operation={operation} />
          </dd>
        </div>
      </dl>
      <PlanHead operation={operation} />
      <Missing line={line} />
    </section>
  )
}

function Consent({ line: { agreement, state } }: { readonly line: TheatreLine }) {
  const { file, id } = useCaseView()
  if (!agreement) return words.noConsent
  const { header, body, at } = agreement
  return (
    <>
      <a href={entryHref(id, header.id)}>
        {fill(words.consentBy, {
          who: contactNamed(file, body.consentBy),
          when: sayWhen(at, file.clinic.zone),
          fingerprint: body.fingerprint.slice(0, 8),
        })}
      </a>
      {state !== 'done' && (
        <p>
          <strong>{words.consentState[state]}</strong>
        </p>
      )}
    </>
  )
}

function Doses({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const minute = useMinute()
  const over = operation.done?.moment.at
  const { lines } = over === undefined ? planInMinute(file, operation, minute) : planAt(file, operation, over)
  const entries = lines.map(({ entry }) => entry)
  const bound = boundPlanOf(file.theCase, entries)
  return (
    <>
      <p>
        {lines.length === 0
          ? words.noPlan
          : fill(words.planned, {
              lines: sayCount(words.lines, lines.length),
              checked: String(lines.filter(({ check }) => check.kind === 'agrees').length),
              fingerprint: bound?.fingerprint.slice(0, 8) ?? words.noFingerprint,
            })}
      </p>
      <Link href={dosePlanHref(id, operation.id)}>{words.toPlan}</Link>
    </>
  )
}

function Missing({ line: { missing, operation } }: { readonly line: TheatreLine }) {
  const { id } = useCaseView()
  if (missing.length === 0) return null
  return (
    <>
      <h3>{words.missing}</h3>
      <ul className={styles.missing}>
        {missing.map(({ code, level, about, settledBy }) => (
          <li key={`${code} ${JSON.stringify(about)}`}>
            <Link href={settleHref(id, operation, settledBy)}>{fill(theatreListInEnglish.missing[code], about)}</Link>
            {': '}
            <span className="soft">{theatreListInEnglish.levels[level]}</span>
          </li>
        ))}
      </ul>
    </>
  )
}
