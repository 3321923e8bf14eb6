import { dayOf } from '#core/time/calendar-day.ts'
import type { Trouble, TroubleFacts } from './trouble.ts'

/**
 * What is graded and counted of a trouble: no words, and not whose judgement it was.
 *
 * @example troubleFactsOf(trouble).on // '2026-03-10'
 */
export function troubleFactsOf(trouble: Trouble): TroubleFacts {
  const { event, unit, needed, before, lasting, decision, read, firstNoticed } = trouble
  return {
    event,
    unit,
    needed,
    before,
    lasting,
    decision: decision && { class: decision.class, by: null, because: null },
    read,
    on: dayOf(firstNoticed),
  }
}
