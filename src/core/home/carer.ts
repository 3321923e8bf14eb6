import type { Case, Line } from '#core/journal/fold.ts'
import { olderVersions } from '#core/journal/older-versions.ts'
import type { HomePlan } from './home-plan.ts'

/** Where the page stands with the person who cares for the animal in place of the owner. */
export type CarerState = {
  readonly contact: string
  /** Since when the page that counts has been owed to this person: going home, or the last change of medicines. */
  readonly since: string
  /** The entry by which this person has the page that counts; null while nobody handed it over. */
  readonly by: Pick<Line, 'at' | 'header'> | null
}

/**
 * Whether the carer whom the discharge names has the page that counts now. A page handed over with the discharge does
 * not count any more once the medicines changed.
 *
 * @example carerOf(plan, theCase)?.by === null // the page is still owed to the carer
 */
export function carerOf({ discharge, changes }: HomePlan, theCase: Case): CarerState | null {
  const { carer } = discharge.body
  if (!carer) return null
  const { contact } = carer
  const last = changes.at(-1)
  const since = last?.at ?? discharge.at
  const counts = last ? [last.header.id] : [discharge.header.id]
  const pages = new Set(counts.flatMap((id) => [id, ...olderVersions(id, theCase)]))
  if (!last && carer.page === 'handed-over') return { contact, since, by: discharge }
  const told = theCase
    .live('told')
    .find(({ body }) => body.who === 'carer' && body.contact === contact && pages.has(body.about))
  return { contact, since, by: told ?? null }
}
