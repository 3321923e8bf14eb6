import type { Sourced } from '#core/evidence/sourced.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { houseJudgementOnly } from './provenance.ts'

/** How long a stretch a referring practice may be asked to look after, by its name in the request. */
export const vetStretches = ['weeks-6', 'months-6', 'months-14'] as const
export type VetStretch = (typeof vetStretches)[number]

/** How long a link of a referring practice opens, when nobody ends it before, and how often it is answered. */
export const vetLinkRules = {
  afterDue: {
    value: { count: 3, unit: 'weeks' },
    ...houseJudgementOnly,
    where: 'past the last day of the look, so that what was seen late is still written down',
  },
  stretches: {
    value: {
      'weeks-6': { count: 6, unit: 'weeks' },
      'months-6': { count: 6, unit: 'months' },
      'months-14': { count: 14, unit: 'months' },
    },
    ...houseJudgementOnly,
    where: 'past the stitches; past the half year; past the last day of the status after a year',
  },
  answersInADay: {
    value: 10,
    ...houseJudgementOnly,
    where: 'more than one practice writes of one animal in a day; whoever sends more is asked to phone',
  },
} as const satisfies {
  readonly afterDue: Sourced<Period>
  readonly stretches: Sourced<Readonly<Record<VetStretch, Period>>>
  readonly answersInADay: Sourced<number>
}
