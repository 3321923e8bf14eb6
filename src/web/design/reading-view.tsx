import type { ReactNode } from 'react'
import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Reading } from '../journal/source.ts'
import { useWho } from '../session/use-who.ts'
import { Notice } from './notice.tsx'
import styles from './reading-view.module.css'
import { sayWhen } from './say-when.ts'

/** Shows a reading in each of its states: still reading, failed with what to do, a copy of before, or as it is. */
export function ReadingView<Value>(props: {
  readonly reading: Reading<Value>
  readonly again?: () => void
  readonly children: (value: Value) => ReactNode
}) {
  const { reading, again, children } = props
  const { pen } = useWho()
  if (reading.kind === 'loading') {
    return (
      <p className={styles.loading} role="status">
        {words.loading}
      </p>
    )
  }
  if (reading.kind === 'failed') {
    return (
      <Notice tone="warn" title={words.failed} live>
        <p>{reading.because}</p>
        {again && (
          <button type="button" onClick={again}>
            {words.tryAgain}
          </button>
        )}
      </Notice>
    )
  }
  return (
    <>
      {reading.from === 'device' && (
        <p className={styles.asOf}>{fill(words.asOf, { when: sayWhen(reading.asOf, pen.zone) })}</p>
      )}
      {children(reading.value)}
    </>
  )
}
