import { type FormEvent, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { caseInEnglish, namesInEnglish } from '#content/wording/app-case.ts'
import { owedScreen } from '#content/wording/app-lists.ts'
import { isSameSubject, subjectsFor } from '#core/chapters/subjects-for.ts'
import { fits } from '#core/identity/search.ts'
import type { Json } from '#core/journal/canonical.ts'
import { refile } from '#core/journal/correct.ts'
import type { Entry, Subject } from '#core/journal/entry.ts'
import { type KindName, kindNamed, type Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { Choices } from '../../../design/choices.tsx'
import { Field } from '../../../design/field.tsx'
import { Page } from '../../../design/page.tsx'
import { ReadingView } from '../../../design/reading-view.tsx'
import { useCase, useLists } from '../../../journal/cases.ts'
import type { Lists } from '../../../journal/database.ts'
import { newId } from '../../../journal/device.ts'
import { useDraft } from '../../../journal/drafts.ts'
import { caseHref } from '../../../journal/hrefs.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { makeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { entryHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { library, useCaseView } from '../case-view.ts'
import { EntryContent, kindName } from '../entry.tsx'
import { MayNotCorrect, mayCorrect } from '../may-correct.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'
import { WithLine } from '../with-line.tsx'
import styles from './history.module.css'

const words = caseInEnglish.refile
type Row = Lists['cases'][number]
type Typed = {
  readonly find: string
  readonly stream: string | null
  readonly subject: Subject | null
  readonly reason: string
}

/** Files an entry to the animal it belongs to: a copy there and a withdrawal here, kept together. */
export default function RefileScreen() {
  return (
    <WithCase>
      <WithLine>{(line) => <Refile line={line} />}</WithLine>
    </WithCase>
  )
}

function Refile({ line }: { readonly line: Line }) {
  const { id, file } = useCaseView()
  const { me, pen } = useWho()
  const [, navigate] = useLocation()
  const key = `${line.header.stream} refile ${line.header.id}`
  const { draft, change, clear, ready } = useDraft<Typed>(key, me.id, () => ({
    find: '',
    stream: null,
    subject: null,
    reason: '',
  }))
  const [tries, setTries] = useState(0)
  const tried = tries > 0
  const form = useFaultFocus(tries)
  const put = (part: Partial<Typed>) => change({ ...draft, ...part })
  const reason = draft.reason.trim()
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    const { stream, subject } = draft
    if (stream === null || subject === null || reason === '') return
    // Who files it, when and where is taken from an entry made now.
    const now = makeEntry(pen, { kind: 'note', stream, subject, body: { text: reason } })
    const entry = wholeOf(line)
    await keepEntries([...refile(entry, { stream, subject }, reason, [newId(), newId()], now)])
    await clear()
    navigate(caseHref(stream))
  }
  if (!ready) return null
  return (
    <Page
      title={fill(words.title, { kind: kindName(line.header.kind) })}
      lead={
        <>
          <CaseLine />
          <p>{words.lead}</p>
        </>
      }
    >
      <div className={styles['what-goes']}>
        <EntryContent line={line} />
      </div>
      {mayCorrect(line, me.role) && line.known && !line.erased ? (
        <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
          <ChooseCase
            find={draft.find}
            stream={draft.stream}
            not={file.stream}
            error={tried && draft.stream === null ? words.caseMissing : null}
            onFind={(find) => put({ find })}
            onChoose={(stream) => put({ stream, subject: null })}
          />
          {draft.stream !== null && (
            <ChooseSubject
              kind={line.header.kind as KindName}
              stream={draft.stream}
              chosen={draft.subject}
              error={tried && draft.subject === null ? caseInEnglish.write.subjectMissing : null}
              onChoose={(subject) => put({ subject })}
            />
          )}
          <Field
            label={caseInEnglish.write.reason}
            help={caseInEnglish.write.reasonHelp}
            error={tried && reason === '' ? caseInEnglish.withdraw.reasonMissing : null}
          >
            {(control) => (
              <textarea {...control} value={draft.reason} onChange={(event) => put({ reason: event.target.value })} />
            )}
          </Field>
          <p>
            <button type="submit" data-weight="main">
              {words.keep}
            </button>
          </p>
        </form>
      ) : (
        <MayNotCorrect line={line} />
      )}
      <p>
        <Link href={entryHref(id, line.header.id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

/** The entry as it is read today, so that the copy is of today's version of its kind. */
function wholeOf({ header, body }: Line): Entry {
  return { ...header, version: kindNamed(header.kind)?.version ?? header.version, body: body as Json }
}

const mostShown = 8

function ChooseCase(props: {
  readonly find: string
  readonly stream: string | null
  readonly not: string
  readonly error: string | null
  readonly onFind: (text: string) => void
  readonly onChoose: (stream: string) => void
}) {
  const { find, stream, not, error, onFind, onChoose } = props
  const reading = useLists()
  return (
    <fieldset className={styles.found}>
      <legend className="said">{words.choose}</legend>
      <Field label={words.find} error={error}>
        {(control) => (
          <input
            {...control}
            type="search"
            autoComplete="off"
            spellCheck={false}
            value={find}
            onChange={(event) => onFind(event.target.value)}
          />
        )}
      </Field>
      <ReadingView reading={reading}>
        {({ cases }) => {
          const found = cases.filter(
            (row) => row.stream !== not && (row.stream === stream || (find.trim() !== '' && fits(row, find))),
          )
          if (find.trim() !== '' && found.length === 0) return <p role="status">{words.none}</p>
          return found.slice(0, mostShown).map((row) => (
            <label key={row.stream} className={styles.animal}>
              <input
                type="radio"
                name="right-animal"
                checked={row.stream === stream}
                onChange={() => onChoose(row.stream)}
              />
              <span>{sayRow(row)}</span>
            </label>
          ))
        }}
      </ReadingView>
    </fieldset>
  )
}

function sayRow({ name, species, ownerName, chip }: Row): string {
  return [name, owedScreen[species === 'cat' ? 'cat' : 'dog'], ownerName, chip].filter((part) => part).join(', ')
}

/** What it is about in the other animal's file: side and operation are chosen anew, never carried over. */
function ChooseSubject(props: {
  readonly kind: KindName
  readonly stream: string
  readonly chosen: Subject | null
  readonly error: string | null
  readonly onChoose: (subject: Subject) => void
}) {
  const { kind, stream, chosen, error, onChoose } = props
  const reading = useCase(stream)
  return (
    <ReadingView reading={reading}>
      {({ file }) => {
        const subjects = subjectsFor(kind, file, `operation-${stream}`)
        const at = chosen ? subjects.findIndex((subject) => isSameSubject(subject, chosen)) : -1
        if (subjects.length === 0) return <p>{words.nothingThere}</p>
        return (
          <Choices
            legend={words.about}
            value={at < 0 ? null : String(at)}
            options={subjects.map((_, index) => String(index))}
            error={error}
            say={(place) => {
              const subject = subjects[Number(place)]
              const name = subject ? saySubject(subject, file, library) : ''
              return name === namesInEnglish.unknownOperation ? caseInEnglish.write.newOperation : name
            }}
            onChoose={(place) => {
              const subject = subjects[Number(place)]
              if (subject) onChoose(subject)
            }}
          />
        )
      }}
    </ReadingView>
  )
}
