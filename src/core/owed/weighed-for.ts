import { Temporal } from 'temporal-polyfill'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { instantText } from '#core/time/moment.ts'
import type { OperationOnFile } from './operations.ts'
import { laterOf } from './setting.ts'

/** From when on a weight counts for an operation: so many hours before it, and of a second side never before it was decided. */
export function weighedFrom(
  { moment }: Pick<OperationOnFile, 'moment'>,
  since: string | null,
  notOlderThan: Period,
): string {
  const from = instantText(Temporal.Instant.from(moment.at).subtract({ hours: notOlderThan.count }))
  return since === null ? from : laterOf(from, since)
}

/**
 * The weight on the scale that counts for an operation; undefined where none does.
 *
 * @example weighedFor(operation, null, theCase, owedRules.before.weightNotOlderThan.value)?.body.weight
 */
export function weighedFor(
  operation: Pick<OperationOnFile, 'moment'>,
  since: string | null,
  theCase: Case,
  notOlderThan: Period,
): Line<BodyOf<'weight'>> | undefined {
  const from = weighedFrom(operation, since, notOlderThan)
  return theCase
    .live('weight')
    .filter(({ at, body }) => body.how === 'scale' && at >= from && at <= operation.moment.at)
    .at(-1)
}
