import { farInEnglish as words } from '#content/wording/app-far.ts'
import { signOutInEnglish } from '#content/wording/app-sign-out.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { ToStamp } from '#core/theatre/stamps.ts'
import { useCaseView } from '../case-view.ts'
import styles from './room.module.css'
import { useSignOut } from './sign-out/use-sign-out.ts'
import { firstOpenPlace, titleOf } from './stamp-row.tsx'

/** Whose operation, which ear, and where it stands: over the clocks, and as large as they are. */
export function FarPart({
  operation,
  next,
}: {
  readonly operation: OperationOnFile
  readonly next: ToStamp | undefined
}) {
  const { file } = useCaseView()
  const { state } = useSignOut(operation)
  const isOpen = state === 'open' && next !== undefined
  return (
    <div className={styles.far}>
      <p className={styles.clock}>
        <span className={styles.clockName}>{file.theCase.latest('identity')?.body.name}</span>
        <strong className={styles.clockMinutes}>{operation.side}</strong>
      </p>
      <p className={styles.clock}>
        <span className={styles.clockName}>{isOpen ? words.firstOpen : words.operation}</span>
        {isOpen ? (
          <a href={`#${firstOpenPlace}`} className={styles.clockMinutes}>
            {titleOf(next)}
          </a>
        ) : (
          <strong className={styles.clockMinutes}>{signOutInEnglish.states[state]}</strong>
        )}
      </p>
    </div>
  )
}
