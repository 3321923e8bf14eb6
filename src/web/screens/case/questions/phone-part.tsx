import { type FormEvent, Fragment, useState } from 'react'
import { questionsApp } from '#content/wording/app-questions.ts'
import { questionsInEnglish } from '#content/wording/questions.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import { contactNamed } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { givenTo } from '#core/questionnaire/answer-line.ts'
import type { Asking } from '#core/questionnaire/askings.ts'
import {
  fieldOf,
  givenAnswers,
  type Posed,
  posedIn,
  type QuestionWords,
  sayPosed,
} from '#core/questionnaire/put-together.ts'
import { Choices } from '../../../design/choices.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { WithSides } from '../../../design/with-sides.tsx'
import { useDraft } from '../../../journal/drafts.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { useCaseView } from '../case-view.ts'
import { useFaultFocus } from '../use-fault-focus.ts'
import styles from './questions.module.css'

const words = questionsApp.phone
const asked: QuestionWords = questionsInEnglish
const ways = ['phone', 'in-person'] as const
type Draft = {
  readonly by: (typeof ways)[number]
  readonly contact: string | null
  readonly picked: Readonly<Record<string, string>>
}

/** The same questions, asked by somebody of the house; what was begun or sent before stands in them. */
export function PhonePart({ asking, onKept }: { readonly asking: Asking; readonly onKept: () => void }) {
  const { file } = useCaseView()
  const { me, pen } = useWho()
  const [tried, setTried] = useState(0)
  const focus = useFaultFocus(tried)
  const { answers: standing } = asking
  const people = file.theCase.latest('household')?.body.contacts.map(({ contact }) => contact) ?? []
  const species = file.theCase.latest('identity')?.body.species
  const posed = species ? posedIn(asking, species) : []
  const key = `questions ${file.stream} ${asking.key} ${standing?.header.id ?? ''}`
  const { draft, change, clear, ready } = useDraft<Draft>(key, me.id, () => ({
    by: 'phone',
    contact: standing?.body.contact ?? (people.length === 1 ? (people[0] ?? null) : null),
    picked: Object.fromEntries(
      posed.flatMap((one) => {
        const given = givenTo(standing?.body.answers ?? [], one.question.id, one.side)
        return given ? [[fieldOf(one), given.answer]] : []
      }),
    ),
  }))
  if (!ready) return null
  const naming = {
    name: file.theCase.latest('identity')?.body.name ?? '',
    sides: { LEFT: 'LEFT', RIGHT: 'RIGHT' },
  } as const
  const answers = givenAnswers(posed, (field) => draft.picked[field] ?? null, asked, naming)
  const lacks = draft.contact === null || answers.length === 0
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTried(tried + 1)
    const { contact, by } = draft
    if (contact === null || answers.length === 0) return
    const body: BodyOf<'owner-answer'> = {
      questionnaire: asking.questionnaire.id,
      edition: asking.questionnaire.edition,
      occasion: asking.occasion.id,
      ears: [...asking.ears],
      by,
      contact,
      language: 'en',
      finished: true,
      answers,
    }
    await writeEntry(pen, {
      kind: 'owner-answer',
      stream: file.stream,
      subject: { kind: 'animal', animal: animalIn(file) },
      body,
      ...(standing && {
        supersedes: [standing.header.id],
        reason: standing.body.finished ? words.reason.answered : words.reason.begun,
      }),
    })
    await clear()
    onKept()
  }
  const put = (field: string, answer: string) => change({ ...draft, picked: { ...draft.picked, [field]: answer } })
  return (
    <section className={styles.part} aria-labelledby="by-phone" data-screen-only>
      <h2 id="by-phone">{words.title}</h2>
      <p className="soft">{words.lead}</p>
      <form ref={focus} className={styles.form} onSubmit={(event) => void keep(event)} noValidate>
        <Choices
          legend={words.contact}
          error={tried > 0 && lacks ? words.missing : null}
          value={draft.contact}
          options={people}
          say={(one) => contactNamed(file, one)}
          onChoose={(contact) => change({ ...draft, contact })}
        />
        <Choices
          legend={words.by}
          value={draft.by}
          options={ways}
          say={(one) => questionsApp.how[one]}
          onChoose={(by) => change({ ...draft, by })}
        />
        {[...new Set(posed.map(({ side }) => side))].map((side) => (
          <Fragment key={side ?? 'animal'}>
            <h3>
              {side === null ? (
                questionsApp.answers.animal
              ) : (
                <WithSides text={fill(questionsApp.answers.ear, { side })} />
              )}
            </h3>
            {posed
              .filter((one) => one.side === side)
              .map((one) => (
                <AskOne key={fieldOf(one)} one={one} naming={naming} value={draft.picked[fieldOf(one)]} onPut={put} />
              ))}
          </Fragment>
        ))}
        <p>
          <button type="submit" data-weight="main">
            {words.keep}
          </button>
        </p>
      </form>
    </section>
  )
}

function AskOne(props: {
  readonly one: Posed
  readonly naming: Parameters<typeof sayPosed>[2]
  readonly value: string | undefined
  readonly onPut: (field: string, answer: string) => void
}) {
  const { one, naming, value, onPut } = props
  const { question, side } = one
  const said = asked[question.id]
  if (!said) return null
  const field = fieldOf(one)
  const ask = sayPosed(said.ask, side, naming)
  if (question.choices.length === 0) {
    return <TextField label={ask} autoComplete="off" value={value ?? ''} onText={(text) => onPut(field, text)} />
  }
  return (
    <Choices
      legend={<WithSides text={ask} />}
      value={question.choices.find((choice) => choice === value) ?? null}
      options={[...question.choices]}
      say={(choice) => sayPosed(said.choices[choice] ?? choice, side, naming)}
      onChoose={(choice) => onPut(field, choice)}
    />
  )
}
