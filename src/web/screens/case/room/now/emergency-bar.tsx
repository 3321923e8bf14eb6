import { Link } from 'wouter'
import { nowInEnglish as words } from '#content/wording/app-now.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { useNow } from '../../../../journal/use-now.ts'
import { nowHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import styles from './now.module.css'
import { sayClock } from './say-clock.ts'
import { useShouts } from './use-shouts.ts'

/** At the foot of the theatre screen, wherever it is scrolled to: the way to the emergencies, and those that last. */
export function EmergencyBar({ operation }: { readonly operation: OperationOnFile }) {
  const { id } = useCaseView()
  const { shouts } = useShouts(operation)
  const now = useNow(1_000)
  return (
    <nav aria-label={words.barLabel} className={styles.bar}>
      {shouts
        .filter(({ ended }) => ended === null)
        .map((one) => (
          <Link key={`${one.call} ${one.number}`} href={nowHref(id, operation.id, one.call)} data-weight="plain">
            {fill(words.runs, { what: words.calls[one.call], clock: sayClock(one, now) })}
          </Link>
        ))}
      <Link href={nowHref(id, operation.id)} data-weight="main" className={styles.barMain}>
        {words.open}
      </Link>
    </nav>
  )
}
