import type { FormEvent } from 'react'
import { useMemo } from 'react'
import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { kindsInEnglish } from '#content/wording/app-kinds.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import type { KindName, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { sayMoment } from '#core/time/moment.ts'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { sayWhen } from '../../../design/say-when.ts'
import { EntryForm } from '../../../forms/entry-form.tsx'
import { wordsFor } from '../../../forms/forms.ts'
import type { Waiting } from '../../../journal/database.ts'
import { asServer } from '../../../journal/device.ts'
import { casePageHref, historyHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { ReasonField } from '../reason-field.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { Compare } from './compare.tsx'
import { DraftedLead, DraftedMark, DraftedUnread } from './drafted-parts.tsx'
import { EarlyYear } from './early-year.tsx'
import { FilesPart } from './files-part.tsx'
import { formChoices } from './form-choices.ts'
import { AsTyped, HomeFindings } from './home-parts.tsx'
import { PriceLines } from './price-lines.tsx'
import { SideDoubt } from './side-doubt.tsx'
import { StopLines } from './stop-lines.tsx'
import { SubjectChoice } from './subject-choice.tsx'
import { SummaryHelp } from './summary-help.tsx'
import { useWriting } from './use-writing.ts'
import { WhenPart, whenOf } from './when-part.tsx'
import styles from './write.module.css'

const words = caseInEnglish.write

/** Kinds that often come with a picture or a paper. */
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
  /** The same entry, where the server did not accept it and only this device has it. */
  readonly refused: Waiting | null
  readonly query: URLSearchParams
}) {
  const { kind, amended, refused, query } = props
  const view = useCaseView()
  const writing = useWriting(kind, { amended, refused }, query)
  const { draft, put, subject, wrong, place, corrects, drafted } = writing
  const choices = useMemo(() => formChoices(view, subject, draft.body), [view, subject, draft.body])
  // The form's own summary takes the focus, unless something above it is open.
  const above = wrong.subject !== null || wrong.when !== null
  const form = useFaultFocus(writing.tries, writing.refusals.length > 0 && !above)
  const submit = (event: FormEvent) => {
    event.preventDefault()
    void writing.keep()
  }
  const under =
    kind === 'estimate'
      ? (field: string) =>
          field === 'lines' && <PriceLines draft={draft.body} place={place} onDraft={(body) => put({ body })} />
      : kind === 'medicine-change'
        ? (field: string) =>
            field === 'stops' && <StopLines draft={draft.body} place={place} onDraft={(body) => put({ body })} />
        : kind === 'discharge'
          ? (field: string) => <AsTyped field={field} />
          : kind === 'twelve-months'
            ? (field: string) => field === 'status' && <EarlyYear subject={subject} when={writing.when} />
            : drafted && ((field: string) => <DraftedMark kind={kind} drafted={drafted} field={field} />)
  if (!writing.ready) return <DraftAwaited />
  const title = refused
    ? words.insteadTitle
    : writing.settling
      ? words.settleTitle
      : corrects
        ? words.amendTitle
        : words.title
  return (
    <Page
      title={fill(title, { kind: kindsInEnglish[kind] })}
      whose={<CaseLine about={subject} />}
      lead={wordsFor(kind).purpose}
    >
      <Settles id={query.get('owed')} />
      {refused && (
        <Notice
          title={refused.because === null ? words.insteadAside : fill(words.instead, { because: refused.because })}
        >
          <p>{words.insteadHelp}</p>
        </Notice>
      )}
      {corrects && corrects.state !== 'live' && <Meanwhile line={corrects} />}
      {writing.found !== null && !drafted?.isOnlyDrafted && (
        <Found at={writing.found} startAnew={() => void writing.startAnew()} />
      )}
      {kind === 'operation-summary' && (
        <SummaryHelp subject={subject} draft={draft.body} onDraft={(body) => put({ body })} />
      )}
      {drafted && <DraftedLead drafted={drafted} />}
      <form ref={form} className={styles.writing} onSubmit={submit} noValidate>
        <SubjectChoice
          subjects={writing.subjects}
          chosen={subject}
          error={wrong.subject}
          onChoose={(next) => put({ subject: next })}
        />
        <SideDoubt kind={kind} subject={subject} />
        <WhenPart
          legend={whenOf(kind)}
          when={draft.when}
          before={writing.before}
          error={wrong.when}
          onWhen={(when) => put({ when })}
        />
        <EntryForm
          kind={kind}
          draft={draft.body}
          onDraft={(body) => put({ body })}
          refusals={writing.refusals}
          beside={writing.misplaced}
          place={place}
          choices={choices}
          under={under}
          now={() =>
            sayMoment({ at: asServer(new Date().toISOString()), zone: place.zone, precision: 'minute', by: 'clock' })
          }
        />
        {(withFiles.has(kind) || draft.files.length > 0) && (
          <FilesPart files={draft.files} error={wrong.files} onFiles={(files) => put({ files })} />
        )}
        {writing.needsReason && (
          <ReasonField error={wrong.reason} value={draft.reason} onText={(reason) => put({ reason })} />
        )}
        {drafted && <DraftedUnread kind={kind} drafted={drafted} error={wrong.unread} />}
        {writing.home && <HomeFindings draft={writing.home} />}
        {corrects && <Compare old={corrects} now={writing.now} error={wrong.same} />}
        <div className={styles.buttons}>
          <button type="submit" data-weight="main" disabled={writing.keeping}>
            {corrects ? words.keepCorrection : words.keep}
          </button>
          <Link href={casePageHref(view.id)} className={styles.leave}>
            {words.leave}
          </Link>
        </div>
      </form>
    </Page>
  )
}

/** Says which owed thing this entry settles. */
function Settles({ id }: { readonly id: string | null }) {
  const { owed } = useCaseView()
  const item = owed.find((one) => one.id === id)
  if (!item) return null
  return <p className={styles.settles}>{fill(words.owed, { what: sayOwed(item, owedInEnglish).what })}</p>
}

/** Somebody else was quicker: what was typed stays, and what keeping it means is said before. */
function Meanwhile({ line }: { readonly line: Line }) {
  const { id } = useCaseView()
  return (
    <Notice tone="warn" title={words.meanwhile}>
      <p>{words.meanwhileHelp}</p>
      <p>
        <Link href={historyHref(id, line.header.id)}>{caseInEnglish.entry.history}</Link>
      </p>
    </Notice>
  )
}

/** A draft of before, with the way to an empty form. */
function Found({ at, startAnew }: { readonly at: string; readonly startAnew: () => void }) {
  const { file } = useCaseView()
  return (
    <Notice>
      <p>{fill(words.draftFound, { when: sayWhen(at, file.clinic.zone) })}</p>
      <p>
        <button type="button" onClick={startAnew}>
          {words.startAnew}
        </button>
      </p>
    </Notice>
  )
}
