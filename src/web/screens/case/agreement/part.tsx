import { type ReactNode, useId } from 'react'
import { agreementPage as words } from '#content/wording/app-agreement.ts'
import type { ConversationPart } from '#core/agreement/conversation.ts'
import { fill } from '#core/outcome/finding.ts'
import styles from './agreement.module.css'
import type { Talk } from './use-talk.ts'

/** One part of the talk: its heading says whether it is complete, and under it stands what is still open. */
export function Part(props: {
  readonly name: ConversationPart
  readonly talk: Talk
  /** What this part says itself, where it stands. */
  readonly saidAbove?: readonly string[]
  readonly children: ReactNode
}) {
  const { name, talk, saidAbove = [], children } = props
  const id = useId()
  const faults = talk.faultsIn(name)
  const below = faults.filter((fault) => !saidAbove.includes(fault))
  return (
    <section id={`part-${name}`} aria-labelledby={id} className={styles.part} tabIndex={-1}>
      <h2 id={id}>
        {words.parts[name]}
        <span className={styles.stand} data-open={faults.length > 0}>
          {faults.length === 0 ? words.complete : fill(words.missing, { count: String(faults.length) })}
        </span>
      </h2>
      {children}
      {below.length > 0 && (
        <ul className={styles.faults} aria-live="polite" data-screen-only>
          {below.map((fault) => (
            <li key={fault}>{fault}</li>
          ))}
        </ul>
      )}
    </section>
  )
}
