import { Link } from 'wouter'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { pauseInEnglish as words } from '#content/wording/app-pause.ts'
import { fill } from '#core/outcome/finding.ts'
import { oneAnaesthetic } from '#core/owed/one-anaesthetic.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { pauseRunOf } from '#core/theatre/pause-run.ts'
import { pausesOf } from '#core/theatre/spoken-pause.ts'
import { pauseHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { saySpan } from './pause/say-span.ts'
import styles from './room.module.css'

/** The way to each of the three spoken pauses, with how far it is. */
export function PauseLinks({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id, operations } = useCaseView()
  const pair = oneAnaesthetic(operation, operations, file.theCase)
  return (
    <nav aria-label={words.links} className={styles.pauses}>
      {pausesOf(operation.id, pair, spokenPauses).map((pause) => {
        const { items, open, unsettled, span } = pauseRunOf(file.theCase, operation.id, pause)
        const count = { count: String(items.length - open.length), all: String(items.length) }
        return (
          <Link key={pause.pause} href={pauseHref(id, operation.id, pause.pause)} className={styles.pause}>
            <strong>{words.titles[pause.pause]}</strong>
            <span>{fill(words.answered, count)}</span>
            {open.length === 0 && span && <span>{fill(words.lasted, { span: saySpan(span) })}</span>}
            {unsettled.length > 0 && <span className={styles.stop}>{words.notSettled}</span>}
          </Link>
        )
      })}
    </nav>
  )
}
