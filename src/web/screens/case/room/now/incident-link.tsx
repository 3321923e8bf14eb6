import { Link } from 'wouter'
import { incidentInEnglish as words } from '#content/wording/app-incident.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import type { RoomCall } from '#core/theatre/room-call.ts'
import { besideHref } from '../../case-hrefs.ts'
import { useCaseView } from '../../case-view.ts'
import { useShouts } from './use-shouts.ts'

/** From an emergency to the note about it, which then begins with what the entries say. */
export function IncidentLink({ operation, call }: { readonly operation: OperationOnFile; readonly call: RoomCall }) {
  const { id } = useCaseView()
  const begun = useShouts(operation).last(call)?.begun.header.id
  const href = besideHref(id, operation.id, 'incident')
  return <Link href={begun === undefined ? href : `${href}?emergency=${begun}`}>{words.openAbout}</Link>
}
