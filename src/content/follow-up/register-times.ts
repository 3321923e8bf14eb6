import type { Sourced } from '#core/evidence/sourced.ts'
import type { Period, Span } from '#core/time/calendar-day.ts'
import { houseJudgementOnly } from './provenance.ts'

/** When a controlled-drug register is late. No law is meant: what it asks is the user's to confirm. */
export const registerTimes = {
  count: {
    value: { from: { count: 3, unit: 'weeks' }, until: { count: 1, unit: 'months' } },
    ...houseJudgementOnly,
    where: 'counted once a month; no source read here says how often, and local law may ask for more',
  },
  settle: {
    value: { count: 1, unit: 'days' },
    ...houseJudgementOnly,
    where:
      'the guidance asks for the line on the same day or the next; that a difference is settled as soon is the house’s',
  },
} as const satisfies { readonly count: Sourced<Span>; readonly settle: Sourced<Period> }
