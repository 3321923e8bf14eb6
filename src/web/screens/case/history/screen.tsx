import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { differences } from '#core/reading/compare.ts'
import { historyOf, type Step } from '#core/reading/history-of.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { sayMoment } from '#core/time/moment.ts'
import { Page } from '../../../design/page.tsx'
import { sayWhen } from '../../../design/say-when.ts'
import { conflictHref, entryHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { library, useCaseView } from '../case-view.ts'
import { EntryContent, kindName } from '../entry.tsx'
import { WithCase } from '../with-case.tsx'
import { WithLine } from '../with-line.tsx'
import { Differences } from '../write/compare.tsx'
import styles from './history.module.css'

const words = caseInEnglish.history

/** Everything ever written about one entry: each step with who, when, why and what it changed, field by field. */
export default function HistoryScreen() {
  return (
    <WithCase>
      <WithLine>{(line) => <History line={line} />}</WithLine>
    </WithCase>
  )
}

function History({ line }: { readonly line: Line }) {
  const { file, id } = useCaseView()
  const steps = historyOf(file.theCase, line.header.id)
  return (
    <Page
      title={fill(words.title, { kind: kindName(line.header.kind) })}
      whose={<CaseLine about={line.header.subject} />}
      lead={steps.length === 1 ? words.onlyOnce : words.lead}
    >
      <ol className={styles.steps}>
        {steps.map((step) => (
          <StepPart key={step.line.header.id} step={step} />
        ))}
      </ol>
      <p data-screen-only>
        <Link href={entryHref(id, steps.find((step) => step.line.state === 'live')?.line.header.id ?? line.header.id)}>
          {words.back}
        </Link>
      </p>
    </Page>
  )
}

function StepPart({ step }: { readonly step: Step }) {
  const { file } = useCaseView()
  const { line, is } = step
  const { header, envelope } = line
  const { zone } = file.clinic
  const stands = line.state === 'live' && is !== 'withdrawal' && is !== 'refiling'
  return (
    <li className={styles.step} data-stands={stands}>
      <h2 className={styles.what}>{words.steps[is]}</h2>
      <p>{fill(words.by, { when: sayWhen(header.writtenAt, zone), who: authorNamed(file, header.author) })}</p>
      {header.reason !== null && <p>{fill(caseInEnglish.entry.reason, { reason: header.reason })}</p>}
      {stands && <Stands line={line} />}
      <Changes step={step} />
      <p className="soft">
        {fill(words.device, {
          device: header.device.id.slice(-6),
          when: envelope ? sayWhen(envelope.receivedAt, zone) : words.notReceived,
        })}
      </p>
    </li>
  )
}

/** Whether it is the one that counts, or one of several between which nobody has chosen yet. */
function Stands({ line: { header } }: { readonly line: Line }) {
  const { file, id } = useCaseView()
  const conflict = file.theCase.conflicts.find(({ between }) => between.includes(header.id))
  if (!conflict) return <p className={styles.counts}>{words.counts}</p>
  return (
    <p className={styles.counts}>
      {words.besideAnother}{' '}
      <Link href={conflictHref(id, header.id)}>
        {fill(caseInEnglish.conflicts.settle, { kind: kindName(conflict.kind) })}
      </Link>
    </p>
  )
}

/** What a correction changed, in one table for each entry it stands in place of; the whole text where it is the first. */
function Changes({ step }: { readonly step: Step }) {
  const { file, rows, nameOfEntry } = useCaseView()
  const { line, is, of } = step
  if (is === 'withdrawal' || is === 'refiling') return null
  if (is === 'first' || !line.known || line.erased) return <EntryContent line={line} />
  const about = (one: Line) => saySubject(one.header.subject, file, library)
  return of.map((before) => {
    const around = [
      {
        at: 'about',
        label: caseInEnglish.write.about,
        says: [about(before), about(line)],
      },
      {
        at: 'when',
        label: caseInEnglish.write.when,
        says: [sayMoment(before.header.happenedAt), sayMoment(line.header.happenedAt)],
      },
    ].filter(({ says: [old, now] }) => old !== now)
    const changed = [...around, ...differences([rows(before), rows(line)], nameOfEntry)]
    return changed.length === 0 ? (
      <p key={before.header.id}>{words.sameAgain}</p>
    ) : (
      <Differences
        key={before.header.id}
        changed={changed}
        heads={[caseInEnglish.write.old, caseInEnglish.write.new]}
        last="new"
      />
    )
  })
}
