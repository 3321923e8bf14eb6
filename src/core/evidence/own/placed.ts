import type { Side } from '#core/animal/species.ts'
import type { Subject } from '#core/journal/entry.ts'
import { lastDayOf } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'

/** Why what was seen cannot have followed the operation it names. */
export type Misplaced = 'other-ear' | 'before-operation'

/**
 * Whether something can have followed an operation: it is not of the other ear, and not of a day before it. A month or a year
 * alone that holds the day of the operation may have.
 *
 * @example misplacedAt({ side: 'RIGHT', day: '2026-07-08' }, leftEar, march2025) // ['other-ear', 'before-operation']
 */
export function misplacedAt(
  { side, day }: { readonly side: Side; readonly day: string | null },
  subject: Subject | null,
  seen: Moment,
): Misplaced[] {
  return [
    ...(subject?.kind === 'ear' && subject.side !== side ? (['other-ear'] as const) : []),
    ...(day !== null && lastDayOf(seen) < day ? (['before-operation'] as const) : []),
  ]
}
