import { useId } from 'react'
import { lateEventWithin } from '#content/follow-up/late-signs.ts'
import { lateEvent as eventWords } from '#content/wording/app-forms/late-event.ts'
import { lateInEnglish as words } from '#content/wording/app-late.ts'
import { type LateAnswer, type LateEventWhat, whatOfSigns } from '#core/late/late-answer.ts'
import type { LateSign } from '#core/late/late-sign-names.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import { Choices } from '../design/choices.tsx'
import { TextField } from '../design/text-field.tsx'
import { WithSides } from '../design/with-sides.tsx'
import { caseHref } from '../journal/hrefs.ts'
import styles from './late.module.css'
import { sayEar, sayWhyEar } from './say-ear.ts'
import type { ShownEar } from './use-index-ears.ts'

const whats: readonly LateEventWhat[] = ['draining-tract', 'abscess', 'swelling', 'jaw-pain', 'tumour-again', 'other']

/** Within how many days "not sure" is owed an answer. */
export const daysToSay = String(lateEventWithin.value.count)

/** The operated ears that are offered, one question: which of them, none, or not sure. Nothing is chosen beforehand. */
export function LateChoices(props: {
  readonly ears: readonly ShownEar[]
  readonly leftOff: number
  readonly signs: readonly LateSign[]
  readonly toldOn: string
  readonly answer: LateAnswer
  readonly error: string | null
  readonly onAnswer: (answer: LateAnswer) => void
}) {
  const { ears, leftOff, signs, toldOn, answer, error, onAnswer } = props
  const id = useId()
  return (
    <div className={styles.choices}>
      <fieldset
        className={styles.ears}
        aria-invalid={error ? true : undefined}
        aria-describedby={error ? `${id}-error` : undefined}
      >
        <legend className={styles.legend}>{words.question}</legend>
        {ears.map((ear) => (
          <OneEar
            key={ear.operation}
            ear={ear}
            toldOn={toldOn}
            group={id}
            checked={answer.belongs === 'operated-ear' && answer.operation === ear.operation}
            onChoose={() => onAnswer({ ...answer, belongs: 'operated-ear', operation: ear.operation })}
          />
        ))}
        {leftOff > 0 && <p className="soft">{sayCount(words.leftOff, leftOff)}</p>}
        {(['none', 'unsure'] as const).map((belongs) => (
          <label key={belongs} className={styles.option}>
            <input
              type="radio"
              name={id}
              checked={answer.belongs === belongs}
              onChange={() => onAnswer({ ...answer, belongs, operation: null })}
            />
            <span>{fill(words[belongs], { days: daysToSay })}</span>
          </label>
        ))}
        {error && (
          <p id={`${id}-error`} className={styles.error}>
            {error}
          </p>
        )}
      </fieldset>
      {answer.belongs === 'operated-ear' && (
        <Choices
          legend={words.what}
          value={answer.what ?? whatOfSigns(signs)}
          options={whats}
          say={(one) => eventWords.fields.what.options[one]}
          onChoose={(what) => onAnswer({ ...answer, what })}
        />
      )}
      {answer.belongs !== null && (
        <TextField
          label={words.because}
          help={words.becauseHelp}
          autoComplete="off"
          maxLength={300}
          value={answer.because}
          onText={(because) => onAnswer({ ...answer, because })}
        />
      )}
      <p className="soft">{words.never}</p>
    </div>
  )
}

function OneEar(props: {
  readonly ear: ShownEar
  readonly toldOn: string
  readonly group: string
  readonly checked: boolean
  readonly onChoose: () => void
}) {
  const { ear, toldOn, group, checked, onChoose } = props
  const id = useId()
  const about = {
    owner: ear.ownerName ?? words.unknown,
    phone: ear.ownerPhone ?? words.unknown,
    chip: ear.chip ?? words.unknown,
  }
  return (
    <div className={styles.ear} data-strength={ear.strength}>
      <label className={styles.name}>
        <input type="radio" name={group} checked={checked} aria-describedby={id} onChange={onChoose} />
        <span>
          <WithSides text={sayEar(ear, toldOn)} />
        </span>
      </label>
      <div id={id} className={styles.why}>
        <p>{sayWhyEar(ear)}</p>
        <p className="soft">{fill(words.file, about)}</p>
        {ear.tractOn !== null && <p className="soft">{fill(words.tractOn, { day: sayStoredDay(ear.tractOn) })}</p>}
      </div>
      <p className={styles.why}>
        <a href={caseHref(ear.stream)} target="_blank" rel="noreferrer">
          {fill(words.open, { name: ear.name })}
        </a>
      </p>
    </div>
  )
}
