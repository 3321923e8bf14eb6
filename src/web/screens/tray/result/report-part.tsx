import { useState } from 'react'
import { Link } from 'wouter'
import { takeInResultInEnglish as words } from '#content/wording/app-take-in-result.ts'
import type { LaboratoryReport } from '#core/laboratory/report.ts'
import { type Answers, noAnswers } from '#core/laboratory/to-result.ts'
import { fill } from '#core/outcome/finding.ts'
import { readMoment, sayMoment } from '#core/time/moment.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { useWho } from '../../../session/use-who.ts'
import { specimensHref } from '../../case/case-hrefs.ts'
import { IsolatesPart } from './isolates-part.tsx'
import { held, sayReport } from './keep-result.ts'
import { MatchPart } from './match-part.tsx'
import { QuestionsPart } from './questions-part.tsx'
import styles from './result.module.css'
import type { Came, Ended } from './steps.ts'
import { useMatch } from './use-match.ts'

/** One report of what came in: what it says, what must still be said, whose it is, and the one step that ends it. */
export function ReportPart(props: {
  readonly report: LaboratoryReport
  readonly from: Came
  readonly answers: Answers | undefined
  readonly ended: Ended | undefined
  readonly put: (answers: Answers) => void
  readonly end: (ended: Ended) => void
}) {
  const { report, from, ended, put, end } = props
  const answers = props.answers ?? noAnswers
  const { pen } = useWho()
  const matched = useMatch(report)
  const [busy, setBusy] = useState(false)
  const says = sayReport(report)
  const mayFile = matched.kind === 'looking' || (matched.match.kind === 'one' && matched.elsewhere === null)
  const hold = async () => {
    setBusy(true)
    if (from.arrived === null) await keepEntries([held(pen, from.file, says, report.laboratory)])
    end({ kind: 'held' })
  }
  return (
    <section className={styles.report} aria-label={says}>
      <h2 className={styles.who}>{says}</h2>
      <p className="soft">{headOf(report, pen.zone)}</p>
      {ended ? (
        <EndedLine ended={ended} />
      ) : (
        <>
          <IsolatesPart report={report} answers={answers} />
          {report.doubts.length > 0 && (
            <ul>
              {report.doubts.map(({ code, about, place }) => (
                <li key={`${code} ${place.line} ${place.field} ${about.drug ?? ''}`}>
                  {fill(words.doubts[code], about)}
                </li>
              ))}
            </ul>
          )}
          <QuestionsPart report={report} answers={answers} put={(part) => put({ ...answers, ...part })} />
          <MatchPart report={report} answers={answers} from={from} matched={matched} end={end} />
          <p>
            <button type="button" data-weight={mayFile ? 'quiet' : 'main'} disabled={busy} onClick={() => void hold()}>
              {words.filing.hold}
            </button>
          </p>
        </>
      )}
    </section>
  )
}

function headOf({ status, growth, animal, laboratory, standard, collected }: LaboratoryReport, zone: string): string {
  const taken = collected === null ? null : readMoment(collected, zone)
  return [
    ...(laboratory === null ? [] : [laboratory]),
    ...(status === null ? [] : [words.statuses[status]]),
    ...(growth === null ? [] : [words.growths[growth]]),
    ...(animal.speciesPrinted === null ? [] : [animal.speciesPrinted]),
    ...(animal.chip === null ? [] : [fill(words.chip, { chip: animal.chip })]),
    ...(standard === null ? [] : [standard]),
    ...(taken === null || 'because' in taken ? [] : [fill(words.collected, { when: sayMoment(taken) })]),
  ].join(', ')
}

function EndedLine({ ended }: { readonly ended: Ended }) {
  if (ended.kind === 'held') return <p role="status">{words.filing.held}</p>
  return (
    <p role="status">
      {ended.said} <Link href={specimensHref(ended.stream)}>{words.filing.open}</Link>
    </p>
  )
}
