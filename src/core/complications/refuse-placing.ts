import { misplacedAt } from '#core/evidence/own/placed.ts'
import type { FieldRefusal } from '#core/forms/refusal.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf, KindName } from '#core/journal/fold.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'

/**
 * What is wrong with the operation that a late event or a trouble names: it was of the other ear, or it came later than what
 * was seen. For the form, which keeps neither; an entry that says it already counts nowhere. None for any other kind.
 *
 * @example refusePlacing('late-event', body, leftEar, file)[0]?.because // 'other-ear'
 */
export function refusePlacing(
  kind: KindName,
  body: BodyOf<KindName>,
  subject: Subject | null,
  file: Pick<CaseFile, 'theCase' | 'clinic'>,
): FieldRefusal[] {
  const named = seenIn(kind, body)
  const operation = operationsOf(file).find(({ id }) => id === named?.operation)
  if (!named || !operation) return []
  const { side, done } = operation
  const day = done && dayOf({ at: done.moment.at, zone: file.clinic.zone })
  return misplacedAt({ side, day }, subject, named.seen).map((because): FieldRefusal => {
    const at = because === 'other-ear' ? 'operation' : named.at
    const about = because === 'other-ear' ? { side } : { given: sayMoment(named.seen), day: sayCalendarDay(day ?? '') }
    return { path: at, at, because, about }
  })
}

function seenIn(kind: KindName, body: BodyOf<KindName>) {
  if (kind === 'late-event') {
    const { operation, firstSeen } = body as BodyOf<'late-event'>
    return { operation, seen: firstSeen, at: 'firstSeen' }
  }
  if (kind === 'complication') {
    const { operation, firstNoticed } = body as BodyOf<'complication'>
    return { operation, seen: firstNoticed, at: 'firstNoticed' }
  }
  return null
}
