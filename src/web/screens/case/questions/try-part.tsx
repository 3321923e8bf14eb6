import { type FormEvent, useState } from 'react'
import { questionsApp } from '#content/wording/app-questions.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { contactNamed } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Asking } from '#core/questionnaire/askings.ts'
import { Choices } from '../../../design/choices.tsx'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { useCaseView } from '../case-view.ts'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './questions.module.css'

const words = questionsApp.try
const ways = {
  message: { channel: 'message', reached: 'message-left' },
  email: { channel: 'email', reached: 'message-left' },
  letter: { channel: 'letter', reached: 'message-left' },
  'phone-no': { channel: 'phone', reached: 'no' },
  'phone-left': { channel: 'phone', reached: 'message-left' },
} as const satisfies Record<keyof typeof words.ways, Pick<BodyOf<'call'>, 'channel' | 'reached'>>
type Way = keyof typeof ways

/** A try to reach the owner, with its way: three over two ways make “unknown” a result, never “fine”. */
export function TryPart({ asking, occasion }: { readonly asking: Asking; readonly occasion: string }) {
  const { file } = useCaseView()
  const { pen } = useWho()
  const people = file.theCase.latest('household')?.body.contacts.map(({ contact }) => contact) ?? []
  const [contact, setContact] = useState<string | null>(people.length === 1 ? (people[0] ?? null) : null)
  const [way, setWay] = useState<Way | null>(null)
  const [tried, setTried] = useState(0)
  const [kept, setKept] = useState(false)
  const focus = useFaultFocus(tried)
  const lacks = contact === null || way === null
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(tried + 1)
    setKept(false)
    if (contact === null || way === null) return
    const about = { direction: 'we-called', about: asking.occasion.triesAbout } as const
    await writeEntry(pen, {
      kind: 'call',
      stream: file.stream,
      subject: { kind: 'animal', animal: animalIn(file) },
      body: { contact, ...about, ...ways[way], text: fill(words.text, { occasion }) },
    })
    setWay(null)
    setTried(0)
    setKept(true)
  }
  return (
    <section className={styles.part} aria-labelledby="write-try" data-screen-only>
      <h2 id="write-try">{words.title}</h2>
      <form ref={focus} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
        {people.length > 1 && (
          <Choices
            legend={words.contact}
            value={contact}
            options={people}
            say={(one) => contactNamed(file, one)}
            onChoose={setContact}
          />
        )}
        <Choices
          legend={words.how}
          error={tried > 0 && lacks ? words.missing : null}
          value={way}
          options={Object.keys(ways) as Way[]}
          say={(one) => words.ways[one]}
          onChoose={setWay}
        />
        <p className="row">
          <button type="submit">{words.keep}</button>
          <span role="status">{kept ? words.kept : ''}</span>
        </p>
      </form>
    </section>
  )
}
