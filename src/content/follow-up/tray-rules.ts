import type { Sourced } from '#core/evidence/sourced.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { houseJudgementOnly } from './provenance.ts'

/** How long something may wait in the holding tray before it is late. */
export const trayRules = {
  fileWithin: {
    value: { count: 1, unit: 'days' },
    ...houseJudgementOnly,
    where: 'a result that nobody filed is a result that nobody reads; a day is the house’s figure',
  },
} as const satisfies { readonly fileWithin: Sourced<Period> }
