import { type FormEvent, useMemo, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { isSameSubject, subjectsFor } from '#core/chapters/subjects-for.ts'
import type { Draft } from '#core/forms/draft.ts'
import { draftOf } from '#core/forms/draft-of.ts'
import { emptyDraft } from '#core/forms/empty-draft.ts'
import { readDraft } from '#core/forms/read-draft.ts'
import type { FieldRefusal, Place } from '#core/forms/refusal.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf, KindName, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { type Moment, sayMoment } from '#core/time/moment.ts'
import { Field } from '../../../design/field.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { sayWhen } from '../../../design/say-when.ts'
import { EntryForm } from '../../../forms/entry-form.tsx'
import { formFor } from '../../../forms/forms.ts'
import { newId } from '../../../journal/device.ts'
import { useDraft } from '../../../journal/drafts.ts'
import type { Attachment } from '../../../journal/take-in.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { casePageHref, historyHref, keptHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { Compare } from './compare.tsx'
import { FilesPart } from './files-part.tsx'
import { formChoices } from './form-choices.ts'
import { SubjectChoice } from './subject-choice.tsx'
import { readWhen, type When, WhenPart, whenOf } from './when-part.tsx'
import styles from './write.module.css'
import { WriteLead } from './write-lead.tsx'

const words = caseInEnglish.write

/** All that is being typed for one entry; kept on this device at every change. */
type Typed = {
  readonly body: Draft
  readonly subject: Subject | null
  readonly when: When
  readonly reason: string
  readonly files: readonly Attachment[]
  /** The id of the operation that a booking would open. */
  readonly operation: string
}

type Checked = {
  readonly body: BodyOf<KindName>
  readonly subject: Subject
  readonly moment: Moment | null
}

type Wrong = {
  readonly subject: string | null
  readonly when: string | null
  readonly reason: string | null
  readonly files: string | null
}
const nothingWrong: Wrong = { subject: null, when: null, reason: null, files: null }

/** Kinds that are a picture or a paper, and kinds that often come with one. */
const isFile: ReadonlySet<KindName> = new Set<KindName>(['photograph', 'paper'])
const withFiles: ReadonlySet<KindName> = new Set<KindName>([
  'photograph',
  'paper',
  'imaging',
  'specimen-result',
  'note',
])

/** The form of one entry, with what it is about, when it happened, and why it is corrected. */
export function Writing(props: {
  readonly kind: KindName
  readonly amended: Line | null
  readonly query: URLSearchParams
}) {
  const { kind, amended, query } = props
  const view = useCaseView()
  const { file, id: address } = view
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const settles = query.get('settle')?.split(',') ?? []
  const replaces = settles.length > 0 ? settles : amended ? [amended.header.id] : []
  const form = formFor(kind)
  const { zone, decimalMark, currency } = file.clinic
  const place: Place = { zone, decimalMark, currency }
  const begin = (): Typed => ({
    body: amended ? draftOf(form, amended.body as unknown as BodyOf<KindName>, place) : emptyDraft(form),
    subject: amended?.header.subject ?? null,
    when: { how: amended ? 'kept' : 'now', text: '' },
    reason: '',
    files: amended?.header.attachments ?? [],
    operation: `operation-${newId()}`,
  })
  const key = `${file.stream} ${kind} ${query}`
  const { draft, change, clear, ready, found } = useDraft<Typed>(key, me.id, begin)
  const [refusals, setRefusals] = useState<readonly FieldRefusal[]>([])
  const [wrong, setWrong] = useState(nothingWrong)
  const [checked, setChecked] = useState<Checked | null>(null)
  const [keeping, setKeeping] = useState(false)
  const put = (part: Partial<Typed>) => change({ ...draft, ...part })

  const subjects = useMemo(() => subjectsFor(kind, file, draft.operation), [kind, file, draft.operation])
  const subject = draft.subject ?? namedBy(query, subjects)
  const choices = useMemo(() => formChoices(view, subject), [view, subject])
  const before = amended?.header.happenedAt ?? null

  const check = (): Checked | null => {
    const when = readWhen(draft.when, { before, zone, now: new Date().toISOString() })
    const read = readDraft(form, draft.body, place)
    const faults: Wrong = {
      subject: subject ? null : words.subjectMissing,
      when: 'error' in when ? when.error : null,
      reason: replaces.length > 0 && draft.reason.trim() === '' ? words.reasonMissing : null,
      files: isFile.has(kind) && draft.files.length === 0 ? words.pictureMissing : null,
    }
    setWrong(faults)
    setRefusals(read.kind === 'refusal' ? [...read.refusal] : [])
    if (faults.reason !== null || faults.files !== null) return null
    if (read.kind === 'refusal' || !subject || 'error' in when) return null
    return { body: read.answer, subject, moment: when.moment }
  }

  const keep = async ({ body, subject: about, moment }: Checked) => {
    setKeeping(true)
    const entry = await writeEntry(pen, {
      kind,
      stream: amended?.header.stream ?? file.stream,
      subject: about,
      body,
      happenedAt: moment,
      supersedes: replaces,
      reason: draft.reason.trim() === '' ? null : draft.reason.trim(),
      attachments: [...draft.files],
    })
    await clear()
    navigate(keptHref(address, entry.id))
  }

  const submit = (event: FormEvent) => {
    event.preventDefault()
    const good = check()
    if (!good) return
    if (amended && settles.length === 0) setChecked(good)
    else void keep(good)
  }

  const title = settles.length > 0 ? words.settleTitle : amended ? words.amendTitle : words.title
  if (!ready) return null
  return (
    <Page title={fill(title, { kind: kindsInEnglish[kind] })} lead={<WriteLead kind={kind} />}>
      <Settles id={query.get('owed')} />
      {amended && amended.state !== 'live' && settles.length === 0 && (
        <Notice tone="warn" title={words.meanwhile}>
          <p>{words.meanwhileHelp}</p>
          <p>
            <Link href={historyHref(address, amended.header.id)}>{caseInEnglish.entry.history}</Link>
          </p>
        </Notice>
      )}
      {found !== null && !checked && (
        <Notice>
          <p>{fill(words.draftFound, { when: sayWhen(found, zone) })}</p>
          <p>
            <button type="button" onClick={() => void clear().then(() => change(begin()))}>
              {words.startAnew}
            </button>
          </p>
        </Notice>
      )}
      {checked && amended ? (
        <Compare
          old={amended}
          now={checked}
          reason={draft.reason}
          keeping={keeping}
          onKeep={() => void keep(checked)}
          onBack={() => setChecked(null)}
        />
      ) : (
        <form className={styles.writing} onSubmit={submit} noValidate>
          <SubjectChoice
            subjects={subjects}
            chosen={subject}
            error={wrong.subject}
            onChoose={(next) => put({ subject: next })}
          />
          <WhenPart
            legend={whenOf(kind)}
            when={draft.when}
            before={before}
            error={wrong.when}
            onWhen={(when) => put({ when })}
          />
          <EntryForm
            kind={kind}
            draft={draft.body}
            onDraft={(body) => put({ body })}
            refusals={refusals}
            place={place}
            choices={choices}
            now={() => sayMoment({ at: new Date().toISOString(), zone, precision: 'minute', by: 'clock' })}
          />
          {(withFiles.has(kind) || draft.files.length > 0) && (
            <FilesPart files={draft.files} error={wrong.files} onFiles={(files) => put({ files })} />
          )}
          {replaces.length > 0 && (
            <Field label={words.reason} help={words.reasonHelp} error={wrong.reason}>
              {(control) => (
                <textarea {...control} value={draft.reason} onChange={(event) => put({ reason: event.target.value })} />
              )}
            </Field>
          )}
          <div className={styles.buttons}>
            <button type="submit" data-weight="main" disabled={keeping}>
              {amended && settles.length === 0 ? words.compare : words.keep}
            </button>
            <Link href={casePageHref(address)} className={styles.leave}>
              {words.leave}
            </Link>
          </div>
        </form>
      )}
    </Page>
  )
}

/** What the link itself named: its ear, its operation, the animal or the household; or the only possibility. */
function namedBy(query: URLSearchParams, subjects: readonly Subject[]): Subject | null {
  const side = query.get('side')
  const operation = query.get('operation')
  const about = query.get('about')
  const found = subjects.find(
    (subject) =>
      (subject.kind === 'ear' && subject.side === side) ||
      (subject.kind === 'operation' && subject.operation === operation) ||
      (subject.kind === about && subjects.filter((one) => isSameSubject(one, subject)).length === 1),
  )
  return found ?? (subjects.length === 1 ? (subjects[0] ?? null) : null)
}

/** Says which owed thing this entry settles. */
function Settles({ id }: { readonly id: string | null }) {
  const { owed } = useCaseView()
  const item = owed.find((one) => one.id === id)
  if (!item) return null
  return <p className={styles.settles}>{fill(words.owed, { what: sayOwed(item, owedInEnglish).what })}</p>
}
