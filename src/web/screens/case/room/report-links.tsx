import { Link } from 'wouter'
import { draftSummaryInEnglish as words } from '#content/wording/app-draft-summary.ts'
import { aboutOperation } from '#core/chapters/subjects-for.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { writersOf } from '#core/people/may-write.ts'
import { doneAt } from '#core/theatre/stamps.ts'
import { useWho } from '../../../session/use-who.ts'
import { paperHref, writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'

const papers = ['operation-report', 'anaesthetic-record'] as const

/** Once the wound is closed or the tube is out: the way to the summary that signs the operation, and both its papers. */
export function ReportLinks({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id } = useCaseView()
  const { me } = useWho()
  const { theCase, stream } = file
  const isSigned = linesAbout(theCase, 'operation-summary', operation.id).length > 0
  const isOver = isSigned || ['closed', 'tube-out'].some((mark) => doneAt(theCase, operation.id, mark) !== null)
  if (!isOver) return null
  const subject = aboutOperation(file, operation.id)
  return (
    <>
      {!isSigned && writersOf('operation-summary').includes(me.role) && (
        <Link href={writeHref(id, 'operation-summary', { subject })}>{words.open}</Link>
      )}
      {papers.map((paper) => (
        <a key={paper} href={paperHref(stream, `${paper}-${operation.id}.pdf`)} target="_blank" rel="noreferrer">
          {words.pdfs[paper]}
        </a>
      ))}
    </>
  )
}
