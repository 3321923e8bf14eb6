import { type FormEvent, useState } from 'react'
import { Link, useLocation, useParams, useSearchParams } from 'wouter'
import { susceptibility } from '#content/susceptibility/index.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { typedReportInEnglish as words } from '#content/wording/app-culture.ts'
import { specimenWords } from '#content/wording/report.ts'
import {
  emptyIsolate,
  emptyTyped,
  readTypedReport,
  type TypedReport,
  type TypedReportRefusal,
  typedAgainReport,
} from '#core/culture/typed-report.ts'
import { contactNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { specimenOf } from '#core/owed/specimen-loop.ts'
import { writersOf } from '#core/people/may-write.ts'
import { Choices } from '../../../design/choices.tsx'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Field } from '../../../design/field.tsx'
import { Page } from '../../../design/page.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import type { Attachment } from '../../../journal/take-in.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { reportHref, specimensHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { MayNotWrite } from '../may-correct.tsx'
import { ReasonField } from '../reason-field.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'
import { FilesPart } from '../write/files-part.tsx'
import styles from './results.module.css'
import { TypedIsolatePart } from './typed-isolate.tsx'

type Specimen = Line<BodyOf<'specimen'>>
type Report = Line<BodyOf<'specimen-result'>>

/** Types what a laboratory wrote of a culture: names are recognised while they are typed, nothing is filled in. */
export default function TypeReportScreen() {
  return (
    <WithCase>
      <TypeReport />
    </WithCase>
  )
}

function TypeReport() {
  const { specimen: wanted = '' } = useParams()
  const [query] = useSearchParams()
  const { file, id } = useCaseView()
  const { me } = useWho()
  const { theCase } = file
  const specimen = specimenOf(theCase, wanted)
  const amended = theCase.live('specimen-result').find(({ header }) => header.id === query.get('amend')) ?? null
  if (!specimen) {
    return (
      <Page title={words.title} whose={<CaseLine />}>
        <p>{words.noSpecimen}</p>
        <p>
          <Link href={specimensHref(id)}>{words.toList}</Link>
        </p>
      </Page>
    )
  }
  const { label, site } = specimen.body
  return (
    <Page
      title={amended ? words.titleAgain : words.title}
      lead={`${fill(words.of, { label, site: specimenWords.sites[site] })}. ${words.lead}`}
      whose={<CaseLine about={specimen.header.subject} />}
      wide
    >
      {writersOf('specimen-result').includes(me.role) ? (
        <Typing key={amended?.header.id ?? wanted} specimen={specimen} amended={amended} />
      ) : (
        <MayNotWrite kind="specimen-result" />
      )}
      <p data-screen-only>
        <Link href={writeHref(id, 'specimen-result', { subject: specimen.header.subject })}>{words.other}</Link>
      </p>
      <p data-screen-only>
        <Link href={specimensHref(id)}>{words.toList}</Link>
      </p>
    </Page>
  )
}

type Draft = TypedReport & { readonly files: readonly Attachment[]; readonly reason: string }

function Typing({ specimen, amended }: { readonly specimen: Specimen; readonly amended: Report | null }) {
  const { file, id } = useCaseView()
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const [refusals, setRefusals] = useState<readonly TypedReportRefusal[]>([])
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const place = `${file.stream} type ${specimen.header.id} ${amended?.header.id ?? ''}`
  const { draft, change, clear, ready } = useDraft<Draft>(place, me.id, () => ({
    ...(amended ? typedAgainReport(amended.body) : emptyTyped),
    files: amended ? [...amended.header.attachments] : [],
    reason: '',
  }))
  if (!ready) return <DraftAwaited />
  const reason = draft.reason.trim()
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    const { files, reason: _, ...typed } = draft
    const read = readTypedReport(typed, specimen.header.id, susceptibility)
    setRefusals(read.kind === 'refusal' ? read.refusal : [])
    setTries(tries + 1)
    if (read.kind === 'refusal' || (amended && reason === '')) return
    const entry = await writeEntry(pen, {
      kind: 'specimen-result',
      stream: file.stream,
      subject: specimen.header.subject,
      body: read.answer,
      attachments: [...files],
      ...(amended && { supersedes: [amended.header.id], reason }),
    })
    await clear()
    navigate(reportHref(id, entry.id))
  }
  const missing = (at: TypedReportRefusal['at']) => {
    const one = refusals.find((refusal) => refusal.at === at)
    return one ? words.faults[one.because] : null
  }
  const laboratories = [...file.contacts].flatMap(([contact, { kind }]) => (kind === 'laboratory' ? [contact] : []))
  return (
    <form ref={form} className={styles.typing} onSubmit={(event) => void keep(event)} noValidate>
      <Choices
        legend={words.status}
        error={missing('status')}
        value={draft.status}
        options={['preliminary', 'final', 'corrected'] as const}
        say={(one) => specimenWords.status[one]}
        onChoose={(status) => change({ ...draft, status })}
      />
      <Choices
        legend={words.came}
        error={missing('came')}
        value={draft.came}
        options={['from-paper', 'typed'] as const}
        say={(one) => words.ways[one]}
        onChoose={(came) => change({ ...draft, came })}
      />
      <div className={styles.fields}>
        <Field label={words.laboratory}>
          {(control) => (
            <select
              {...control}
              value={draft.laboratory}
              onChange={(event) => change({ ...draft, laboratory: event.target.value })}
            >
              <option value="">{words.laboratoryNone}</option>
              {laboratories.map((one) => (
                <option key={one} value={one}>
                  {contactNamed(file, one)}
                </option>
              ))}
            </select>
          )}
        </Field>
        <TextField
          label={words.accession}
          value={draft.accession}
          onText={(accession) => change({ ...draft, accession })}
        />
        <TextField
          label={words.standard}
          help={words.standardHelp}
          value={draft.standard}
          onText={(standard) => change({ ...draft, standard })}
        />
      </div>
      <Choices
        legend={words.growth}
        error={missing('growth')}
        value={draft.growth}
        options={['none', 'growth'] as const}
        say={(one) => words.grown[one]}
        onChoose={(growth) => change({ ...draft, growth })}
      />
      {draft.growth === 'growth' && <Isolates draft={draft} change={change} refusals={refusals} />}
      <Field label={words.text}>
        {(control) => (
          <textarea
            {...control}
            rows={3}
            value={draft.text}
            onChange={(event) => change({ ...draft, text: event.target.value })}
          />
        )}
      </Field>
      <FilesPart files={draft.files} error={null} onFiles={(files) => change({ ...draft, files })} />
      {amended && (
        <ReasonField
          value={draft.reason}
          error={tries > 0 && reason === '' ? caseInEnglish.write.reasonMissing : null}
          onText={(text) => change({ ...draft, reason: text })}
        />
      )}
      <p>
        <button type="submit" data-weight="main">
          {words.keep}
        </button>
      </p>
    </form>
  )
}

function Isolates(props: {
  readonly draft: Draft
  readonly change: (draft: Draft) => void
  readonly refusals: readonly TypedReportRefusal[]
}) {
  const { draft, change, refusals } = props
  const { isolates } = draft
  return (
    <>
      {isolates.map((isolate, place) => (
        <TypedIsolatePart
          // An organism that is being typed has no name of its own yet.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          key={place}
          place={place}
          isolate={isolate}
          refusals={refusals}
          onIsolate={(next) => change({ ...draft, isolates: isolates.map((one, at) => (at === place ? next : one)) })}
          onRemove={
            isolates.length === 1
              ? null
              : () => change({ ...draft, isolates: isolates.filter((_, at) => at !== place) })
          }
        />
      ))}
      <p>
        <button type="button" onClick={() => change({ ...draft, isolates: [...isolates, emptyIsolate] })}>
          {words.addIsolate}
        </button>
      </p>
    </>
  )
}
