import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { resultRead } from '#content/wording/app-forms/result-read.ts'
import { specimenWords } from '#content/wording/report.ts'
import type { Side } from '#core/animal/species.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { isOfEar } from '#core/owed/operations.ts'
import { resultsOf } from '#core/owed/specimen-loop.ts'
import { dayOf, daysBetween, sayCalendarDay } from '#core/time/calendar-day.ts'
import { ListGroup } from '../../../design/list-group.tsx'
import { Page } from '../../../design/page.tsx'
import { useMinute } from '../../../journal/use-minute.ts'
import { casePageHref, reportHref, typeReportHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { WithCase } from '../with-case.tsx'
import styles from './results.module.css'
import { sayAgo } from './say-ago.ts'
import { sayGrowth } from './say-growth.ts'

const words = cultureInEnglish.list
const sides: readonly Side[] = ['LEFT', 'RIGHT']

/** Every specimen of the animal, by ear, with what came back of it. */
export default function SpecimensScreen() {
  return (
    <WithCase>
      <SpecimensPage />
    </WithCase>
  )
}

function SpecimensPage() {
  const { file, id } = useCaseView()
  const specimens = file.theCase.live('specimen')
  return (
    <Page title={words.title} lead={words.lead} whose={<CaseLine />}>
      {specimens.length === 0 && <p>{words.none}</p>}
      {sides.map((side) => {
        const ofEar = specimens.filter((line) => isOfEar(line, side))
        if (ofEar.length === 0) return null
        return (
          <ListGroup key={side} id={`ear-${side}`} title={fill(words.ear, { side })}>
            <ul className={`bare ${styles.specimens}`}>
              {[...ofEar].reverse().map((specimen) => (
                <SpecimenRow key={specimen.header.id} specimen={specimen} />
              ))}
            </ul>
          </ListGroup>
        )
      })}
      <p data-screen-only>
        <Link href={writeHref(id, 'specimen')}>{words.take}</Link>
      </p>
      <p data-screen-only>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

function SpecimenRow({ specimen }: { readonly specimen: Line<BodyOf<'specimen'>> }) {
  const { file, id } = useCaseView()
  const now = useMinute()
  const { zone } = file.clinic
  const { header, body, at } = specimen
  const taken = dayOf({ at, zone })
  const reports = resultsOf(file.theCase, header.id)
  return (
    <li className={styles.specimen}>
      <h3>
        {body.label}: {specimenWords.sites[body.site]}
      </h3>
      <p className="soft">
        {fill(words.taken, { day: sayCalendarDay(taken), ago: sayAgo(daysBetween(taken, dayOf({ at: now, zone }))) })}
        {'; '}
        {body.tests.map((test) => specimenWords.tests[test]).join(', ')}
      </p>
      {reports.length === 0 && <p>{words.waits}</p>}
      {reports.length > 0 && (
        <ul className={styles.reports}>
          {reports.map((report) => (
            <ReportRow key={report.header.id} report={report} />
          ))}
        </ul>
      )}
      <p data-screen-only>
        <Link href={typeReportHref(id, header.id)} aria-label={fill(words.typeSaid, { label: body.label })}>
          {words.type}
        </Link>
      </p>
    </li>
  )
}

function ReportRow({ report }: { readonly report: Line<BodyOf<'specimen-result'>> }) {
  const { file, id } = useCaseView()
  const { zone } = file.clinic
  const { header, body, at } = report
  const read = file.theCase.live('result-read').findLast((line) => line.body.result === header.id)
  const about = {
    status: specimenWords.status[body.status],
    day: sayCalendarDay(dayOf({ at, zone })),
  }
  return (
    <li>
      <Link href={reportHref(id, header.id)}>{capital(fill(words.report, about))}</Link>
      {': '}
      {sayGrowth(body)}
      {'; '}
      {read ? (
        fill(words.read, {
          who: authorNamed(file, read.header.author),
          day: sayCalendarDay(dayOf({ at: read.at, zone })),
          decision: resultRead.fields.decision.options[read.body.decision],
        })
      ) : (
        <strong className={styles.unread}>{words.unread}</strong>
      )}
      {'.'}
    </li>
  )
}
