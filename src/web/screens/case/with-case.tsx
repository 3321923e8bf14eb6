import { type ReactNode, useMemo } from 'react'
import { Link, useParams } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { Page } from '../../design/page.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { type OpenCase, useCase } from '../../journal/cases.ts'
import { streamOfHref } from '../../journal/hrefs.ts'
import { CaseContext, caseViewOf } from './case-view.ts'

const words = caseInEnglish.noSuchCase

/** Opens the case that the address names, for every page of it, in each state of reading. */
export function WithCase({ children }: { readonly children: ReactNode }) {
  const { id = '' } = useParams()
  const reading = useCase(streamOfHref(id))
  return (
    <ReadingView reading={reading}>
      {(open) => (
        <Opened open={open} id={id}>
          {children}
        </Opened>
      )}
    </ReadingView>
  )
}

function NoSuchCase() {
  return (
    <Page title={words.title}>
      <p>{words.help}</p>
      <p>
        <Link href="/find">{words.find}</Link>
      </p>
    </Page>
  )
}

/** The case around a part of the page. */
export function Opened(props: { readonly open: OpenCase; readonly id: string; readonly children: ReactNode }) {
  const { open, id, children } = props
  const view = useMemo(() => caseViewOf(open, id), [open, id])
  if (open.file.theCase.lines.length === 0) return <NoSuchCase />
  return <CaseContext value={view}>{children}</CaseContext>
}
