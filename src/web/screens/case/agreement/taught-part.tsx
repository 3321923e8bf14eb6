import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { type AskedBack, askedBack } from '#core/agreement/conversation.ts'
import { fill } from '#core/outcome/finding.ts'
import { Choices } from '../../../design/choices.tsx'
import { TextField } from '../../../design/text-field.tsx'
import styles from './agreement.module.css'
import { Part } from './part.tsx'
import type { Talk } from './use-talk.ts'

const answers = ['own-words', 'with-help', 'not-yet'] as const

/** Five things said back: the first answer, what was said, and how it went after explaining again. */
export function TaughtPart({ talk }: { readonly talk: Talk }) {
  return (
    <Part name="taught" talk={talk}>
      <p className="soft">{words.taughtLead}</p>
      {askedBack.map((item) => (
        <Item key={item} item={item} talk={talk} />
      ))}
    </Part>
  )
}

function Item({ item, talk }: { readonly item: AskedBack; readonly talk: Talk }) {
  const { taught } = talk.talk
  const one = taught[item] ?? { answer: null, said: '', again: null }
  const change = (part: Partial<typeof one>) => talk.put({ taught: { ...taught, [item]: { ...one, ...part } } })
  const name = words.taught[item]
  return (
    <div className={styles.taught}>
      <Choices
        legend={name}
        value={one.answer}
        options={answers}
        say={(answer) => words.answers[answer]}
        onChoose={(answer) => change({ answer, again: answer === 'own-words' ? null : one.again })}
      />
      {one.answer !== null && one.answer !== 'own-words' && (
        <>
          <TextField
            label={fill(words.saidWhat, { item: name })}
            value={one.said}
            autoComplete="off"
            onText={(said) => change({ said })}
          />
          <Choices
            legend={fill(words.again, { item: name })}
            value={one.again}
            options={answers}
            say={(answer) => words.answers[answer]}
            onChoose={(again) => change({ again })}
          />
        </>
      )}
    </div>
  )
}
