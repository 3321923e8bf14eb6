import type { Sourced } from '#core/evidence/sourced.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { houseJudgementOnly } from './provenance.ts'

/** How long a private link to the owner's page opens, when nobody ends it before. */
export const ownerLinkRules = {
  privateLasts: {
    value: { count: 60, unit: 'days' },
    ...houseJudgementOnly,
    where: 'from the first talk past the stitches: long enough to decide without haste; a new link is made in a minute',
  },
  privateLastsAfterHome: {
    value: { count: 14, unit: 'months' },
    ...houseJudgementOnly,
    where: 'counted from going home: the twelve-month check, and two months in which an answer may still come',
  },
  inRoomHours: {
    value: 2,
    ...houseJudgementOnly,
    where: 'one consultation: the tablet is handed to the next owner afterwards',
  },
} as const satisfies {
  readonly privateLasts: Sourced<Period>
  readonly privateLastsAfterHome: Sourced<Period>
  readonly inRoomHours: Sourced<number>
}
