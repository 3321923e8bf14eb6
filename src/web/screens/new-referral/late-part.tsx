import { lateSignNames, lateInEnglish as words } from '#content/wording/app-late.ts'
import type { LateAnswer } from '#core/late/late-answer.ts'
import type { LateSign } from '#core/late/late-sign-names.ts'
import { fill } from '#core/outcome/finding.ts'
import { LateChoices } from '../../late/late-choices.tsx'
import type { IndexEars } from '../../late/use-index-ears.ts'
import { Part } from './part.tsx'
import styles from './screen.module.css'

/** A late sign is told: the ears operated here to which it may belong, one question. Nothing where none fits. */
export function LatePart(props: {
  readonly ears: IndexEars
  readonly signs: readonly LateSign[]
  readonly today: string
  readonly answer: LateAnswer
  readonly onAnswer: (answer: LateAnswer) => void
}) {
  const { ears, signs, today, answer, onAnswer } = props
  const heard = fill(words.heard, { signs: signs.map((one) => lateSignNames[one]).join(', ') })
  return (
    <div aria-live="polite" className={styles.matches}>
      {ears.kind === 'away' && (
        <Part title={words.title}>
          <p>
            {heard} {words.away}
          </p>
        </Part>
      )}
      {ears.kind === 'found' && ears.ears.length > 0 && (
        <Part title={words.title}>
          <p>{heard}</p>
          <p className="soft">{words.lead}</p>
          <LateChoices
            ears={ears.ears}
            leftOff={ears.leftOff}
            signs={signs}
            toldOn={today}
            answer={answer}
            error={null}
            onAnswer={onAnswer}
          />
        </Part>
      )}
    </div>
  )
}
