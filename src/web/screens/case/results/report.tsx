import { useMemo } from 'react'
import { Link, useParams } from 'wouter'
import { choiceInEnglish } from '#content/wording/app-choice.ts'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { specimenWords } from '#content/wording/report.ts'
import type { SpecimenStanding } from '#core/culture/specimen-standing.ts'
import { authorNamed, contactNamed } from '#core/journal/clinic.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { rootOf } from '#core/owed/operations.ts'
import { reportOf, resultsOf } from '#core/owed/specimen-loop.ts'
import { sayMoment } from '#core/time/moment.ts'
import { Caution } from '../../../design/caution.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { useMinute } from '../../../journal/use-minute.ts'
import { Attachments } from '../attachments.tsx'
import { entryHref, historyHref, reportHref, specimensHref, typeReportHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { WithCase } from '../with-case.tsx'
import { DecidePart } from './decide-part.tsx'
import { DurationPart } from './duration-part.tsx'
import { IsolatesPart } from './isolates-part.tsx'
import { OptionsPart } from './options-part.tsx'
import { type Report, readingOf, standingOfSpecimen } from './read-here.ts'
import styles from './results.module.css'
import { SaveReport } from './save-report.tsx'
import { sayGrowth } from './say-growth.ts'
import { SpecimenPart } from './specimen-part.tsx'
import { TopicalPart } from './topical-part.tsx'

const words = cultureInEnglish.report

/** One report of a laboratory: what it means for this animal and this ear, and what somebody decides. */
export default function ReportScreen() {
  return (
    <WithCase>
      <ReportHere />
    </WithCase>
  )
}

function ReportHere() {
  const { report: wanted = '' } = useParams()
  const { file, id } = useCaseView()
  const report = file.theCase.live('specimen-result').find(({ header }) => header.id === wanted)
  if (report) return <ReportPage key={wanted} report={report} />
  return (
    <Page title={words.noSuch} whose={<CaseLine />}>
      <p>{words.noSuchHelp}</p>
      <p>
        <Link href={specimensHref(id)}>{words.toList}</Link>
      </p>
    </Page>
  )
}

function ReportPage({ report }: { readonly report: Report }) {
  const { file, id } = useCaseView()
  const now = useMinute()
  const day = now.slice(0, 10)
  // A new day changes the age of a sample and of the animal; a new minute changes nothing that is said here.
  // biome-ignore lint/correctness/useExhaustiveDependencies: worked out once a day
  const standing = useMemo(() => standingOfSpecimen(file, report, now), [file, report, day])
  const reading = useMemo(() => readingOf(file, report), [file, report])
  const label = standing?.specimen.body.label ?? ''
  const isCulture = report.body.growth !== 'not-a-culture'
  return (
    <Page
      title={fill(words.title, { label })}
      lead={capital(
        fill(cultureInEnglish.list.report, { status: specimenWords.status[report.body.status], day: sayDayOf(report) }),
      )}
      whose={<CaseLine about={report.header.subject} />}
      wide
    >
      <Newer report={report} />
      <p data-screen-only>
        <a href="#decide">{words.toDecide}</a>
      </p>
      <ActedBefore report={report} />
      <SpecimenPart standing={standing} isCulture={isCulture} />
      <Stated report={report} standing={standing} />
      {report.body.growth === 'none' && (
        <section className={styles.part}>
          <GrewBeside standing={standing} />
          <p>
            <strong>{words.noGrowth}</strong> {words.noGrowthMeans}
          </p>
        </section>
      )}
      {reading && reading.isolates.length > 0 && (
        <>
          <IsolatesPart report={report} reading={reading} />
          <OptionsPart reading={reading} />
        </>
      )}
      {!reading && report.body.isolates.length > 0 && <NotRead report={report} />}
      {isCulture && <TopicalPart standing={standing} />}
      {isCulture && <DurationPart />}
      <DecidePart report={report} reading={reading} />
      <Caution />
      <p data-screen-only>
        <Link href={specimensHref(id)}>{words.toList}</Link>
      </p>
    </Page>
  )
}

/** Why nothing is read, and everything as it was printed. */
function NotRead({ report: { body } }: { readonly report: Report }) {
  const { file, id } = useCaseView()
  const hasAnimal = file.theCase.latest('identity') !== undefined
  return (
    <section className={styles.part}>
      <Notice tone="warn" title={words.notReadTitle}>
        <p>{hasAnimal ? words.notReadEdition : words.notReadAnimal}</p>
        {!hasAnimal && (
          <p data-screen-only>
            <Link href={writeHref(id, 'identity')}>{choiceInEnglish.toIdentity}</Link>
          </p>
        )}
      </Notice>
      <ul className={styles.facts}>
        {body.isolates.map(({ key, organism, results }) => (
          <li key={key}>
            {fill(words.printed, { organism, drugs: results.map(({ drug, raw }) => `${drug} ${raw}`).join('; ') })}
          </li>
        ))}
      </ul>
    </section>
  )
}

function sayDayOf({ header }: Report): string {
  return sayMoment({ ...header.happenedAt, precision: 'day' })
}

/** Nobody decides by a report that a later one has overtaken without seeing that. */
function Newer({ report }: { readonly report: Report }) {
  const { file, id } = useCaseView()
  const latest = resultsOf(file.theCase, report.body.specimen).findLast(
    ({ body }) => (body.growth === 'not-a-culture') === (report.body.growth === 'not-a-culture'),
  )
  if (!latest || latest.header.id === report.header.id) return null
  return (
    <Notice tone="warn" title={words.newer}>
      <p data-screen-only>
        <Link href={reportHref(id, latest.header.id)}>{words.toNewer}</Link>
      </p>
    </Notice>
  )
}

/** A corrected report names who acted on the version that it replaces. */
function ActedBefore({ report }: { readonly report: Report }) {
  const { file, id } = useCaseView()
  const { before } = reportOf(report, file.theCase)
  if (before.length === 0) return null
  return (
    <Notice tone="warn" title={words.acted}>
      <p>{words.actedHelp}</p>
      <ul className={styles.facts}>
        {before.map(({ what, line: { header } }) => (
          <li key={header.id}>
            <Link href={entryHref(id, header.id)}>
              {fill(words.actedOn[what], {
                who: authorNamed(file, header.author),
                when: sayMoment(header.happenedAt),
              })}
            </Link>
          </li>
        ))}
      </ul>
      <p data-screen-only>
        <Link href={historyHref(id, report.header.id)}>{words.differs}</Link>
      </p>
    </Notice>
  )
}

/** Where the report came from, as it stands in the record, and the original. */
function Stated({ report, standing }: { readonly report: Report; readonly standing: SpecimenStanding | null }) {
  const { file, id } = useCaseView()
  const { header, body } = report
  const { laboratory, accession, standard, text, tissue } = body
  const said = [
    laboratory === null ? words.noLaboratory : fill(words.from, { laboratory: contactNamed(file, laboratory) }),
    accession === null ? words.noNumber : fill(words.number, { number: accession }),
    standard === null ? words.noStandard : fill(words.standard, { standard }),
  ]
  const about = { who: authorNamed(file, header.author), when: sayMoment(header.happenedAt) }
  return (
    <section className={styles.part} aria-labelledby="stated">
      <h2 id="stated">{words.stated}</h2>
      <p>
        {capital(said.join('; '))}. {fill(words.came, about)}.{' '}
        {header.attachments.length > 0 ? words.original : words.noOriginal}
      </p>
      <Attachments line={report} />
      {tissue && <p>{tissue.diagnosis}</p>}
      {text !== null && (
        <p>
          {words.words}: “{text}”
        </p>
      )}
      <Beside standing={standing} />
      <p data-screen-only>
        <Link href={entryHref(id, header.id)}>{words.entry}</Link>
        {', '}
        <Link
          href={
            body.growth === 'not-a-culture'
              ? writeHref(id, 'specimen-result', { subject: header.subject, amend: header.id })
              : typeReportHref(id, body.specimen, header.id)
          }
        >
          {words.correct}
        </Link>
      </p>
      {body.growth !== 'not-a-culture' && <SaveReport result={report} />}
    </section>
  )
}

/** A sample on entry that grew nothing is no answer while the one after lavage grew. */
function GrewBeside({ standing }: { readonly standing: SpecimenStanding | null }) {
  const { file, id } = useCaseView()
  const { theCase } = file
  const roots = new Set(standing?.beside.map(({ header }) => rootOf(theCase, header.id)))
  const grew = theCase
    .live('specimen-result')
    .filter(({ body }) => body.growth === 'growth' && roots.has(rootOf(theCase, body.specimen)))
  if (grew.length === 0) return null
  return (
    <Notice tone="warn" title={words.grewBeside}>
      <ul className={styles.facts}>
        {grew.map(({ header, body }) => (
          <li key={header.id}>
            <Link href={reportHref(id, header.id)}>{capital(sayGrowth(body))}</Link>
          </li>
        ))}
      </ul>
    </Notice>
  )
}

/** What the other pots of the same operation say: entry and after-lavage samples often differ. */
function Beside({ standing }: { readonly standing: SpecimenStanding | null }) {
  const { file, id } = useCaseView()
  if (!standing || standing.beside.length === 0) return null
  const { theCase } = file
  return (
    <>
      <h3>{words.besideTitle}</h3>
      <ul className={styles.facts}>
        {standing.beside.map(({ header, body }) => {
          const other = resultsOf(theCase, header.id).at(-1)
          const about = {
            site: capital(specimenWords.sites[body.site]),
            label: body.label,
            what: other ? sayGrowth(other.body) : cultureInEnglish.list.waits,
          }
          return (
            <li key={header.id}>
              {other ? (
                <Link href={reportHref(id, other.header.id)}>{fill(words.besideGrew, about)}</Link>
              ) : (
                fill(words.besideGrew, about)
              )}
            </li>
          )
        })}
      </ul>
    </>
  )
}
