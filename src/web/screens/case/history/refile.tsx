import { type FormEvent, useState } from 'react'
import { useLocation } from 'wouter'
import { caseInEnglish, namesInEnglish } from '#content/wording/app-case.ts'
import { isSameSubject, subjectsFor } from '#core/chapters/subjects-for.ts'
import type { Json } from '#core/journal/canonical.ts'
import { refile } from '#core/journal/correct.ts'
import type { Entry, Subject } from '#core/journal/entry.ts'
import { type KindName, kindNamed, type Line } from '#core/journal/fold.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { Choices } from '../../../design/choices.tsx'
import { DraftAwaited } from '../../../design/draft-awaited.tsx'
import { ReadingView } from '../../../design/reading-view.tsx'
import { useCase } from '../../../journal/cases.ts'
import { newId } from '../../../journal/device.ts'
import { useDraft } from '../../../journal/drafts.ts'
import { caseHref } from '../../../journal/hrefs.ts'
import { momentAgain } from '../../../journal/moment-again.ts'
import { keepEntries } from '../../../journal/outbox.ts'
import { makeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { library, useCaseView } from '../case-view.ts'
import { ChooseCase } from '../choose-case.tsx'
import { mayCorrect } from '../may-correct.tsx'
import { useFaultFocus } from '../use-fault-focus.ts'
import { WithCase } from '../with-case.tsx'
import { WithLine } from '../with-line.tsx'
import { EntryToGo } from './entry-to-go.tsx'

const words = caseInEnglish.refile
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
  const { file } = useCaseView()
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
  if (!ready) return <DraftAwaited />
  return (
    <EntryToGo
      line={line}
      words={words}
      may={mayCorrect(line, me.role) && line.known && !line.erased}
      form={form}
      reason={{ value: draft.reason, missing: tried && reason === '', onText: (text) => put({ reason: text }) }}
      onKeep={keep}
    >
      <ChooseCase
        label={words.find}
        find={draft.find}
        stream={draft.stream}
        not={file.stream}
        error={tried && draft.stream === null ? words.caseMissing : null}
        onFind={(find) => put({ find })}
        onChoose={({ stream }) => put({ stream, subject: null })}
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
    </EntryToGo>
  )
}

/** The entry as it is read today, so that the copy is of today's version of its kind. */
function wholeOf(line: Line): Entry {
  const { header, body } = line
  const happenedAt = momentAgain(line)
  return { ...header, happenedAt, version: kindNamed(header.kind)?.version ?? header.version, body: body as Json }
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
