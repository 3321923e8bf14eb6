import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { choiceInEnglish } from '#content/wording/app-choice.ts'
import { animalIn } from '#core/chapters/subjects-for.ts'
import type { OptionId } from '#core/choice/option.ts'
import { sessionIds } from '#core/choice/told-ids.ts'
import type { EarSheet } from '#core/choice/worksheet.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import { optionIds } from '#core/journal/kinds/choice.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { isOfEar } from '#core/owed/operations.ts'
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
import styles from './choice.module.css'
import { type ChoiceDraft, choiceOf, emptyChoice, type Session, takenOver } from './choice-draft.ts'
import { optionName } from './option-name.ts'

const words = choiceInEnglish.writing

/** The choice of this ear as an entry: an answer and a reason for each option talked over, and what was weighed. */
export function WritePart({ sheet }: { readonly sheet: EarSheet }) {
  const { file } = useCaseView()
  const { me } = useWho()
  const [kept, setKept] = useState<string | null>(null)
  const { side } = sheet
  return (
    <section className={styles.part} aria-labelledby="choice-write">
      <h3 id="choice-write">{fill(words.title, { side })}</h3>
      <Standing sheet={sheet} />
      {kept !== null && <Kept entry={kept} sheet={sheet} />}
      {writersOf('choice').includes(me.role) ? (
        <Writing key={kept} sheet={sheet} stream={file.stream} onKept={setKept} />
      ) : (
        <MayNotWrite kind="choice" />
      )}
    </section>
  )
}

/** What was decided for this ear so far, with the way to correct it. */
function Standing({ sheet: { side } }: { readonly sheet: EarSheet }) {
  const { file, id } = useCaseView()
  const line = file.theCase.live('choice').findLast((one) => isOfEar(one, side))
  if (!line) return null
  const about = { when: sayMoment(line.header.happenedAt), who: authorNamed(file, line.header.author) }
  return (
    <p>
      <Link href={entryHref(id, line.header.id)}>{fill(words.standing, about)}</Link>.{' '}
      <span data-screen-only>
        <Link href={writeHref(id, 'choice', { subject: line.header.subject, amend: line.header.id })}>
          {words.correct}
        </Link>
        . <span className="soft">{words.again}</span>
      </span>
    </p>
  )
}

function Kept({ entry, sheet }: { readonly entry: string; readonly sheet: EarSheet }) {
  const { id } = useCaseView()
  return (
    <Notice title={fill(words.kept, { side: sheet.side })} live>
      <p>
        <Link href={entryHref(id, entry)}>{words.seeIt}</Link>
      </p>
    </Notice>
  )
}

function Writing(props: {
  readonly sheet: EarSheet
  readonly stream: string
  readonly onKept: (entry: string) => void
}) {
  const { sheet, stream, onKept } = props
  const { file } = useCaseView()
  const { me, pen } = useWho()
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { side } = sheet
  const { draft, change, clear, ready } = useDraft<ChoiceDraft>(`choice ${stream} ${side}`, me.id, () => emptyChoice)
  if (!ready) return <DraftAwaited />
  const told = optionIds.filter((id) => sheet.options.some(({ option }) => option === id))
  const sessions: readonly Session[] = ['one-ear', ...sessionIds, 'not-decided']
  const chosen = told.filter((id) => draft.answers[id] === 'chosen')
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    const body = choiceOf(draft, told)
    if (!body) return
    const subject = { kind: 'ear', animal: animalIn(file), side } as const
    const entry = await writeEntry(pen, { kind: 'choice', stream, subject, body })
    await clear()
    onKept(entry.id)
  }
  const none = tries > 0 && told.every((id) => draft.answers[id] === undefined)
  return (
    <form ref={form} className={styles.form} onSubmit={(event) => void keep(event)} noValidate data-screen-only>
      <p className="soft">{words.lead}</p>
      <ol className={styles.answers}>
        {told.map((option, index) => (
          <li key={option}>
            <AnswerPart
              option={option}
              draft={draft}
              change={change}
              tried={tries > 0}
              fault={none && index === 0 ? words.noneAnswered : null}
            />
            {draft.answers[option] !== undefined && (
              <TakeOver option={option} sheet={sheet} draft={draft} change={change} />
            )}
          </li>
        ))}
      </ol>
      {chosen.length > 1 && (
        <Notice>
          <p>{words.doubled}</p>
        </Notice>
      )}
      <Choices
        legend={words.session}
        error={tries > 0 && draft.session === null ? words.sessionMissing : null}
        value={draft.session}
        options={sessions}
        say={(one) => words.sessions[one]}
        onChoose={(session) => change({ ...draft, session })}
      />
      <div className={styles.boxes}>
        {(['for', 'against', 'missing'] as const).map((box) => (
          <Field key={box} label={words[box]} help={words.lines}>
            {(control) => (
              <textarea
                {...control}
                rows={6}
                value={draft[box]}
                onChange={(event) => change({ ...draft, [box]: event.target.value })}
              />
            )}
          </Field>
        ))}
      </div>
      <p>
        <button type="submit" data-weight="main">
          {fill(words.keep, { side })}
        </button>
      </p>
    </form>
  )
}

type Part = {
  readonly option: OptionId
  readonly draft: ChoiceDraft
  readonly change: (draft: ChoiceDraft) => void
}

function AnswerPart({
  option,
  draft,
  change,
  tried,
  fault,
}: Part & { readonly tried: boolean; readonly fault: string | null }) {
  const answer = draft.answers[option]
  const because = draft.because[option] ?? ''
  return (
    <>
      <Choices
        inline
        legend={capital(optionName(option))}
        error={fault}
        value={answer ?? null}
        options={['chosen', 'declined', 'open'] as const}
        say={(one) => choiceInEnglish.options.answers[one]}
        onChoose={(one) => change({ ...draft, answers: { ...draft.answers, [option]: one } })}
      />
      {answer !== undefined && (
        <Field
          label={`${words.because}: ${optionName(option)}`}
          help={words.becauseHelp}
          error={tried && because.trim() === '' ? words.becauseMissing : null}
        >
          {(control) => (
            <textarea
              {...control}
              rows={2}
              value={because}
              onChange={(event) => change({ ...draft, because: { ...draft.because, [option]: event.target.value } })}
            />
          )}
        </Field>
      )}
      {answer !== undefined && (
        <p>
          <button
            type="button"
            data-weight="quiet"
            aria-label={fill(choiceInEnglish.options.said, { do: words.clear, option: optionName(option) })}
            onClick={() => {
              const { [option]: _, ...others } = draft.answers
              change({ ...draft, answers: others })
            }}
          >
            {words.clear}
          </button>
        </p>
      )}
    </>
  )
}

/** Puts what the worksheet lists for an option into the three boxes, where every line can be changed. */
function TakeOver({ option, sheet, draft, change }: Part & { readonly sheet: EarSheet }) {
  const [taken, setTaken] = useState(false)
  const weighed = sheet.options.find((one) => one.option === option)
  if (!weighed) return null
  return (
    <p>
      <button
        type="button"
        onClick={() => {
          change(takenOver(draft, weighed, choiceInEnglish.facts))
          setTaken(true)
        }}
      >
        {fill(words.take, { option: optionName(option) })}
      </button>{' '}
      <span aria-live="polite" className="soft">
        {taken && words.taken}
      </span>
    </p>
  )
}
