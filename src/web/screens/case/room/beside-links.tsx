import { Link } from 'wouter'
import { incidentInEnglish } from '#content/wording/app-incident.ts'
import { specimensInEnglish } from '#content/wording/app-specimens.ts'
import { tellOwnerInEnglish } from '#content/wording/app-tell-owner.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { shoutsOf } from '#core/theatre/shouts.ts'
import { besideHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './room.module.css'

/** The other screens of an operation: its specimens, an incident note, and telling the owner once something was called. */
export function BesideLinks({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const called = shoutsOf(file.theCase, operation.id).length > 0
  return (
    <nav aria-label={specimensInEnglish.title} className={styles.further}>
      <Link href={besideHref(id, operation.id, 'specimens')}>{specimensInEnglish.open}</Link>
      <Link href={besideHref(id, operation.id, 'incident')}>{incidentInEnglish.open}</Link>
      {called && <Link href={besideHref(id, operation.id, 'told')}>{tellOwnerInEnglish.open}</Link>}
    </nav>
  )
}
