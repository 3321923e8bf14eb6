import { type FormEvent, useState } from 'react'
import { ownerNotesInEnglish as words } from '#content/wording/app-owner-notes.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { type OwnerNote, type OwnerReply, ownerNotesOf } from '#core/owed/owner-notes.ts'
import { writersOf } from '#core/people/may-write.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import { minutesBetween } from '#core/time/moment.ts'
import { Field } from '../../design/field.tsx'
import { sayWhen } from '../../design/say-when.ts'
import { useDraft } from '../../journal/drafts.ts'
import { writeEntry } from '../../journal/write-entry.ts'
import { useWho } from '../../session/use-who.ts'
import { Attachments } from './attachments.tsx'
import { useCaseView } from './case-view.ts'
import styles from './owner-notes.module.css'
import panels from './panels.module.css'
import { useFaultFocus } from './use-fault-focus.ts'

type Told = { readonly note: OwnerNote; readonly replies: readonly OwnerReply[] }
/** In minutes: what came sooner came straight. */
const straight = 2
/** So many stand open below each other; the others are folded in, unless they wait for an answer. */
const shown = 3

/** What owners wrote from home, newest first, with their pictures, what is owed, and the answers; answered here. */
export function OwnerNotes() {
  const { file, owed } = useCaseView()
  const all = ownerNotesOf(file.theCase).reverse()
  if (all.length === 0) return null
  const waits = ({ note }: Told) => owed.some(({ id }) => id === owedId(note))
  const open = all.filter((one, at) => at < shown || waits(one))
  const older = all.filter((one) => !open.includes(one))
  return (
    <section className={panels.panel} aria-labelledby="owner-notes">
      <h3 id="owner-notes">{words.title}</h3>
      <p className="soft">{words.lead}</p>
      {open.map((one) => (
        <Note key={one.note.header.id} {...one} />
      ))}
      {older.length > 0 && (
        <details className={panels.opener}>
          <summary>{sayCount(words.older, older.length)}</summary>
          {older.map((one) => (
            <Note key={one.note.header.id} {...one} />
          ))}
        </details>
      )}
    </section>
  )
}

function owedId({ header }: OwnerNote): string {
  return `owner-note-to-answer:${header.id}`
}

function Note({ note, replies }: Told) {
  const { file, owed } = useCaseView()
  const { me } = useWho()
  const [more, setMore] = useState(false)
  const { header, body } = note
  const { zone } = file.clinic
  const item = owed.find(({ id }) => id === owedId(note))
  const died = file.theCase.latest('death') !== undefined
  const mayAnswer = !died && writersOf('owner-reply').includes(me.role)
  const title = `owner-note-title-${header.id}`
  const about = { owner: authorNamed(file, header.author), when: sayWhen(note.at, zone) }
  return (
    <article
      className={styles.note}
      id={`owner-note-${header.id}`}
      aria-labelledby={title}
      tabIndex={-1}
      data-state={item ? 'open' : 'settled'}
    >
      <h4 id={title}>{fill(words.note, about)}</h4>
      {body.text === null ? <p className="soft">{words.onlyPictures}</p> : <p className={styles.text}>{body.text}</p>}
      <p className="soft">{sayAround(note, zone)}</p>
      <Attachments line={note} />
      {replies.map((reply) => (
        <div key={reply.header.id} className={styles.answer}>
          <p className="soft">
            {fill(words.answered, {
              person: authorNamed(file, reply.header.author),
              when: sayWhen(reply.at, zone),
            })}
          </p>
          <p className={styles.text}>{reply.body.text}</p>
        </div>
      ))}
      {item && <p className={styles.open}>{fill(words.open, { when: sayWhen(item.dueBy, zone) })}</p>}
      {!item && replies.length === 0 && <p className="soft">{died ? words.died : words.spoken}</p>}
      {mayAnswer && (item || more) && <Answer note={note} onKept={() => setMore(false)} />}
      {mayAnswer && !item && !more && (
        <p data-screen-only>
          <button type="button" data-weight="quiet" onClick={() => setMore(true)}>
            {words.more}
          </button>
        </p>
      )}
    </article>
  )
}

/** When the owner saw it, which ear, in which language, and how long it waited for a network. */
function sayAround({ at, body: { seen, ear, keptSince, language } }: OwnerNote, zone: string): string {
  const day = seen && `${sayStoredDay(seen.day)}${seen.time === null ? '' : `, ${seen.time}`}`
  return [
    day ? fill(words.seen, { when: day }) : words.notSeen,
    ...(ear === null ? [] : [fill(words.about, { ear: words.ears[ear] })]),
    ...(language === 'en' ? [] : [fill(words.language, { language: nameOfLanguage(language) })]),
    ...(keptSince === null || minutesBetween(keptSince, { at }) < straight
      ? []
      : [fill(words.keptSince, { when: sayWhen(keptSince.at, zone) })]),
  ].join(' ')
}

function nameOfLanguage(tag: string): string {
  return new Intl.DisplayNames('en', { type: 'language' }).of(tag) ?? tag
}

function Answer({ note, onKept }: { readonly note: OwnerNote; readonly onKept: () => void }) {
  const { me, pen } = useWho()
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { draft, change, clear, ready } = useDraft(`answer ${note.header.id}`, me.id, () => '')
  if (!ready) return null
  const text = draft.trim()
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (text === '') return
    const { stream, subject, id } = note.header
    await writeEntry(pen, { kind: 'owner-reply', stream, subject, body: { note: id, text } })
    change('')
    await clear()
    setTries(0)
    onKept()
  }
  return (
    <form ref={form} className="stack" onSubmit={(event) => void keep(event)} noValidate data-screen-only>
      <Field label={words.answer} help={words.answerHelp} error={tries > 0 && text === '' ? words.missing : null}>
        {(control) => <textarea {...control} rows={4} value={draft} onChange={(event) => change(event.target.value)} />}
      </Field>
      <p>
        <button type="submit" data-weight="main">
          {words.keep}
        </button>
      </p>
    </form>
  )
}
