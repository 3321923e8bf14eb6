import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { resultRead } from '#content/wording/app-forms/result-read.ts'
import { editionName } from '#core/culture/edition-name.ts'
import type { ReportReading } from '#core/culture/read-report.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { writersOf } from '#core/people/may-write.ts'
import { sayMoment } from '#core/time/moment.ts'
import { Choices } from '../../../design/choices.tsx'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Field } from '../../../design/field.tsx'
import { Notice } from '../../../design/notice.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { entryHref, writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { MayNotWrite } from '../may-correct.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { factsHere, type Report } from './read-here.ts'
import styles from './results.module.css'

const words = cultureInEnglish.decide
const decisions = ['no-change', 'change', 'stop', 'sample-again', 'decide-later'] as const
type Decision = BodyOf<'result-read'>['decision']
type Typed = { readonly decision: Decision | null; readonly text: string }

/** Reading and deciding, on the page that says what the report means; the edition it was judged by is kept. */
export function DecidePart({ report, reading }: { readonly report: Report; readonly reading: ReportReading | null }) {
  const { file } = useCaseView()
  const { me } = useWho()
  const [kept, setKept] = useState<{ readonly entry: string; readonly decision: Decision } | null>(null)
  const read = file.theCase.live('result-read').findLast(({ body }) => body.result === report.header.id)
  const isOpen = !read || read.body.decision === 'decide-later'
  return (
    <section className={styles.part} aria-labelledby="decide">
      <h2 id="decide">{words.title}</h2>
      {kept && <Kept {...kept} />}
      {read && <Standing read={read} />}
      {isOpen &&
        (writersOf('result-read').includes(me.role) ? (
          <Writing report={report} reading={reading} onKept={setKept} />
        ) : (
          <MayNotWrite kind="result-read" />
        ))}
    </section>
  )
}

function Standing({ read }: { readonly read: Line<BodyOf<'result-read'>> }) {
  const { file, id } = useCaseView()
  const { header, body } = read
  const about = {
    when: sayMoment(header.happenedAt),
    who: authorNamed(file, header.author),
    decision: resultRead.fields.decision.options[body.decision],
  }
  const edition = factsHere(file).editions.find((one) => one.id === body.edition)
  return (
    <>
      <p>
        <Link href={entryHref(id, header.id)}>
          {fill(body.decision === 'decide-later' ? words.waits : words.standing, about)}
        </Link>{' '}
        {edition && fill(words.standingEdition, { standard: editionName(edition) })}
      </p>
      <p>“{body.text}”</p>
      {body.decision !== 'decide-later' && (
        <p data-screen-only>
          <Link href={writeHref(id, 'result-read', { subject: header.subject, amend: header.id })}>
            {words.correct}
          </Link>
        </p>
      )}
    </>
  )
}

function Kept({ entry, decision }: { readonly entry: string; readonly decision: Decision }) {
  const { id } = useCaseView()
  return (
    <Notice title={words.kept} live>
      {decision !== 'decide-later' && <p>{words.keptNext}</p>}
      <p>
        {(decision === 'change' || decision === 'stop') && (
          <>
            <Link href={writeHref(id, 'medicine-change')}>{words.toChange}</Link>{' '}
          </>
        )}
        <Link href={entryHref(id, entry)}>{words.seeIt}</Link>
      </p>
    </Notice>
  )
}

function Writing(props: {
  readonly report: Report
  readonly reading: ReportReading | null
  readonly onKept: (kept: { readonly entry: string; readonly decision: Decision }) => void
}) {
  const { report, reading, onKept } = props
  const { me, pen } = useWho()
  const { id, stream, subject } = report.header
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft<Typed>(`${stream} read ${id}`, me.id, () => ({
    decision: null,
    text: '',
  }))
  if (!ready) return <DraftAwaited />
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    const { decision } = draft
    const text = draft.text.trim()
    if (decision === null || text === '') return
    const edition = reading && reading.isolates.length > 0 ? reading.edition.id : null
    const entry = await writeEntry(pen, {
      kind: 'result-read',
      stream,
      subject,
      body: { result: id, decision, edition, text },
    })
    await clear()
    onKept({ entry: entry.id, decision })
  }
  const tried = tries > 0
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate data-screen-only>
      <Choices
        legend={words.question}
        error={tried && draft.decision === null ? words.missing : null}
        value={draft.decision}
        options={decisions}
        say={(one) => resultRead.fields.decision.options[one]}
        onChoose={(decision) => change({ ...draft, decision })}
      />
      <Field
        label={words.words}
        help={words.wordsHelp}
        error={tried && draft.text.trim() === '' ? words.wordsMissing : null}
      >
        {(control) => (
          <textarea
            {...control}
            rows={4}
            value={draft.text}
            onChange={(event) => change({ ...draft, text: event.target.value })}
          />
        )}
      </Field>
      {reading && reading.isolates.length > 0 && (
        <p className="soft">{fill(words.edition, { standard: editionName(reading.edition) })}</p>
      )}
      <p>
        <button type="submit" data-weight="main">
          {words.keep}
        </button>
      </p>
    </form>
  )
}
