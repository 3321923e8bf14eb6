import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { Notice } from '../../design/notice.tsx'
import { conflictHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import { kindName } from './entry.tsx'

const words = caseInEnglish.conflicts

/** Entries that stand side by side: said at the top of the page, with the way to settle each. */
export function Conflicts() {
  const { id, file } = useCaseView()
  const { conflicts } = file.theCase
  if (conflicts.length === 0) return null
  const said = sayCount(words, conflicts.length)
  return (
    <Notice tone="warn" title={said}>
      <ul>
        {conflicts.map(({ kind, between }) => (
          <li key={between.join()}>
            <Link href={conflictHref(id, between[0] ?? '')}>{fill(words.settle, { kind: kindName(kind) })}</Link>
          </li>
        ))}
      </ul>
    </Notice>
  )
}
