import { useRef, useState } from 'react'
import { questionsApp } from '#content/wording/app-questions.ts'
import { ownerQuestionsInEnglish } from '#content/wording/owner-questions.ts'
import { ownerQuestionsInSpanish } from '#content/wording/spanish/owner-questions.ts'
import { contactNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { ownersOf } from '#core/people/owner-link-state.ts'
import { Field } from '../../../design/field.tsx'
import { call } from '../../../journal/api.ts'
import { connection } from '../../../journal/live.ts'
import { useSignal } from '../../../journal/signal.ts'
import { DoingNote, useDoing } from '../../settings/doing.tsx'
import { useCaseView } from '../case-view.ts'
import styles from './questions.module.css'

const words = questionsApp.send
type Made = { readonly contact: string; readonly path: string }

/** The text with the address of the questions, in the language of the household; a person sends it. */
export function SendPart() {
  const { file } = useCaseView()
  const [made, setMade] = useState<Made | null>(null)
  const { doing, run, working } = useDoing()
  const away = useSignal(connection) === 'lost'
  const owners = ownersOf(file)
  const make = (contact: string) =>
    run(async () => {
      const { path } = await call<{ path: string }>('make-owner-link', { stream: file.stream, contact, use: 'private' })
      setMade({ contact, path })
      return ''
    })
  return (
    <section className={styles.part} aria-labelledby="send-questions" data-screen-only>
      <h2 id="send-questions">{words.title}</h2>
      <p className="soft">{words.lead}</p>
      {away && <p role="status">{words.away}</p>}
      {owners.length === 0 && <p>{words.noOwner}</p>}
      {!away && (
        <p className="row">
          {owners.map((contact) => (
            <button key={contact} type="button" disabled={working} onClick={() => void make(contact)}>
              {fill(words.make, { name: contactNamed(file, contact) })}
            </button>
          ))}
        </p>
      )}
      <DoingNote doing={doing} />
      {made && <Text made={made} />}
    </section>
  )
}

function Text({ made: { contact, path } }: { readonly made: Made }) {
  const { file } = useCaseView()
  const [copied, setCopied] = useState(false)
  const area = useRef<HTMLTextAreaElement>(null)
  const language = file.theCase.latest('household')?.body.language ?? 'en'
  const { message } = language.startsWith('es') ? ownerQuestionsInSpanish : ownerQuestionsInEnglish
  const name = contactNamed(file, contact)
  const text = fill(message, {
    owner: name,
    clinic: file.clinic.name,
    name: file.theCase.latest('identity')?.body.name ?? '',
    address: `${location.origin}${path}/questions`,
    phone: file.clinic.phone,
  })
  return (
    <>
      <Field label={fill(words.text, { name })}>
        {(control) => (
          <textarea {...control} ref={area} rows={5} value={text} readOnly onFocus={() => area.current?.select()} />
        )}
      </Field>
      <p className="row">
        {'clipboard' in navigator ? (
          <button type="button" onClick={() => void navigator.clipboard.writeText(text).then(() => setCopied(true))}>
            {words.copy}
          </button>
        ) : (
          words.select
        )}
        <span role="status">{copied ? words.copied : ''}</span>
      </p>
    </>
  )
}
