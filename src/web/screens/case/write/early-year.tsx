import { ownCounting } from '#content/evidence/own-counting.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { earlyYearLook } from '#core/evidence/own/year-look.ts'
import type { Subject } from '#core/journal/entry.ts'
import { fill } from '#core/outcome/finding.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'
import { Notice } from '../../../design/notice.tsx'
import { asServer } from '../../../journal/device.ts'
import { useCaseView } from '../case-view.ts'

const words = caseInEnglish.write

/** A result "after a year" that is said too early: it is kept as it is said, and what that means stands beside it. */
export function EarlyYear(props: {
  readonly subject: Subject | null
  /** A moment of null is now. */
  readonly when: { readonly moment: Moment | null } | null
}) {
  const { subject, when } = props
  const { file } = useCaseView()
  if (subject?.kind !== 'ear' || when === null) return null
  const { zone } = file.clinic
  const at = when.moment?.at ?? asServer(new Date().toISOString())
  const early = earlyYearLook(file, subject.side, dayOf({ at, zone }), ownCounting)
  if (!early) return null
  const { operated, after, from } = early
  return (
    <Notice tone="warn" title={words.earlyYear}>
      <p>
        {fill(words.earlyYearHelp, {
          day: String(after),
          operated: sayCalendarDay(operated),
          from: sayCalendarDay(from),
        })}
      </p>
    </Notice>
  )
}
