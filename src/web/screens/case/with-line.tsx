import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import type { Line } from '#core/journal/fold.ts'
import { Page } from '../../design/page.tsx'
import { casePageHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'

/** Opens the entry that the address names; says so where this file does not hold it. */
export function WithLine({ children }: { readonly children: (line: Line) => ReactNode }) {
  const { entry = '' } = useParams()
  const { file, id } = useCaseView()
  const line = file.theCase.line(entry)
  if (line) return children(line)
  return (
    <Page title={caseInEnglish.write.entryNotHereTitle}>
      <p>{caseInEnglish.write.entryNotHere}</p>
      <p>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}
