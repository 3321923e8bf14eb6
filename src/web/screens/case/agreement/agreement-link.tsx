import { Link } from 'wouter'
import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { agreementHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { StateLines } from './state-lines.tsx'

/** How the agreement stands, above its chapter, and the way to its page. */
export function AgreementLink() {
  const { id } = useCaseView()
  return (
    <>
      <StateLines />
      <p data-screen-only>
        <Link href={agreementHref(id)}>{words.open}</Link>
      </p>
    </>
  )
}
