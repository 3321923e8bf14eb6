import { Link } from 'wouter'
import { signOutInEnglish as words } from '#content/wording/app-sign-out.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { SignOutPoint } from '#core/theatre/sign-out.ts'
import { sayPoint } from '#documents/operation-report/sign-out.ts'
import { besideHref, casePageHref, pauseHref, writeHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import styles from './sign-out.module.css'

/** One point that stands against the sign-out, with the way to what settles it and to the note that would explain it. */
export function PointLine({ point, operation }: { readonly point: SignOutPoint; readonly operation: OperationOnFile }) {
  const { id } = useCaseView()
  const said = sayPoint(point)
  const { href, how } = useWay(point, operation)
  const query = new URLSearchParams({ point: point.code, ...(point.of === null ? {} : { of: point.of }) })
  return (
    <li className={styles.point}>
      <strong>{said}</strong>
      <span className={styles.acts} data-screen-only>
        <Link href={href} className={styles.act} aria-label={`${how}: ${said}`}>
          {how}
        </Link>
        <Link
          href={`${besideHref(id, operation.id, 'incident')}?${query}`}
          className={styles.act}
          aria-label={`${words.orNote}: ${said}`}
        >
          {words.orNote}
        </Link>
      </span>
    </li>
  )
}

function useWay(
  { settledAt }: SignOutPoint,
  operation: OperationOnFile,
): { readonly href: string; readonly how: string } {
  const { file, id } = useCaseView()
  const subject = aboutOperation(file, operation.id)
  switch (settledAt.kind) {
    case 'specimens':
      return { href: besideHref(id, operation.id, 'specimens'), how: words.settle.specimens }
    case 'count':
      return settledAt.amends === null
        ? { href: writeHref(id, 'count', { subject }), how: words.settle.count }
        : { href: writeHref(id, 'count', { amend: settledAt.amends }), how: words.settle.amend }
    case 'pause':
      return {
        href: `${pauseHref(id, operation.id, 'before-leaving')}?at=${settledAt.item}`,
        how: words.settle.pause,
      }
    case 'sides':
      return { href: `${casePageHref(id)}#sides`, how: words.settle.sides }
  }
}
