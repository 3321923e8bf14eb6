import { Link } from 'wouter'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { troubleScreenInEnglish as words } from '#content/wording/app-trouble.ts'
import { troublesOf } from '#core/complications/troubles-of.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { troubleHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'

/** The way to what went wrong, with how much of it is on record, once something was operated. */
export function TroubleLink() {
  const { file, id, operations } = useCaseView()
  if (!operations.some(({ done }) => done !== null)) return null
  const { troubles, unplaced } = troublesOf(file, ownCounting)
  const count = troubles.length + unplaced.length
  return (
    <p data-screen-only>
      <Link href={troubleHref(id)}>{words.link}</Link>{' '}
      <span className="soft">{count === 0 ? words.linkNone : sayCount(words.linkCount, count)}</span>
    </p>
  )
}
