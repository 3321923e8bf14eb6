import { secondSideInEnglish as words } from '#content/wording/second-side.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { secondSideOf } from '#core/second-side/second-side.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { entryHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'

/** Beside an operation of a second ear: which one was the first, and the way to it. */
export function FirstSideLink({ operation }: { readonly operation: OperationOnFile }) {
  const { file, operations, id } = useCaseView()
  const second = secondSideOf(operation, operations, file.theCase)
  if (!second?.first.done) return null
  const { side, moment, done } = second.first
  const date = sayCalendarDay(dayOf({ at: moment.at, zone: file.clinic.zone }))
  return (
    <p>
      {fill(words.ofOperation, { first: side, date })} <a href={entryHref(id, done.by)}>{words.toFirst}</a>
    </p>
  )
}
