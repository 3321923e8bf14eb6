import { type ReactNode, useMemo } from 'react'
import { useParams } from 'wouter'
import { ReadingView } from '../../design/reading-view.tsx'
import { type OpenCase, useCase } from '../../journal/cases.ts'
import { streamOfHref } from '../../journal/hrefs.ts'
import { CaseContext, caseViewOf } from './case-view.ts'

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

/** The case around a part of the page. */
export function Opened(props: { readonly open: OpenCase; readonly id: string; readonly children: ReactNode }) {
  const { open, id, children } = props
  const view = useMemo(() => caseViewOf(open, id), [open, id])
  return <CaseContext value={view}>{children}</CaseContext>
}
