import { referralInEnglish } from '#content/wording/app-referral.ts'
import { triageInEnglish } from '#content/wording/app-triage.ts'
import { redFlags } from '#core/journal/kinds/referral.ts'
import { Choices } from '../../design/choices.tsx'
import { TextField } from '../../design/text-field.tsx'
import { Part, type PartProps } from './part.tsx'
import styles from './screen.module.css'

const { flags: words, safety } = referralInEnglish
const answers = ['yes', 'no', 'not-asked'] as const

/** The signs that decide how soon: asked as soon as the caller has said what is wrong. */
export function RedFlagsPart({ call, put }: PartProps) {
  const open = redFlags.filter((sign) => (call.signs[sign] ?? 'not-asked') === 'not-asked')
  const noToOpen = () => put({ signs: { ...call.signs, ...Object.fromEntries(open.map((sign) => [sign, 'no'])) } })
  return (
    <Part title={words.title}>
      <p className="soft">{words.help}</p>
      <div className={styles.flags}>
        {redFlags.map((sign) => (
          <Choices
            key={sign}
            inline
            legend={triageInEnglish.signs[sign]}
            value={call.signs[sign] ?? null}
            options={answers}
            say={(one) => words.answers[one]}
            onChoose={(answer) => put({ signs: { ...call.signs, [sign]: answer } })}
          />
        ))}
      </div>
      {open.length > 0 && open.length < redFlags.length && (
        <p>
          <button type="button" onClick={noToOpen}>
            {words.allNo}
          </button>
        </p>
      )}
    </Part>
  )
}

/** What is asked of every caller before the call ends. */
export function SafetyPart({ call, put }: PartProps) {
  return (
    <Part title={safety.title}>
      <div className={styles.flags}>
        <Choices
          inline
          legend={safety.allergy}
          value={call.allergy}
          options={answers}
          say={(one) => words.answers[one]}
          onChoose={(allergy) => put({ allergy })}
        />
        {call.allergy === 'yes' && (
          <TextField
            label={safety.to}
            autoComplete="off"
            maxLength={300}
            value={call.allergyTo}
            onText={(text) => put({ allergyTo: text })}
          />
        )}
        <Choices
          inline
          legend={safety.fetch}
          value={call.mayFetchRecords}
          options={answers}
          say={(one) => words.answers[one]}
          onChoose={(mayFetchRecords) => put({ mayFetchRecords })}
        />
      </div>
    </Part>
  )
}
