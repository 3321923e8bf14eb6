import type { HomePlan } from '#core/home/home-plan.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'

/** When the page is read, by the clock of the clinic: what is over by then is not said any more. */
export type Today = {
  readonly at: string
  readonly day: string
  /** Not later than the day on which the animal went home: tonight is the first night there. */
  readonly isFirst: boolean
  readonly isDayOf: (moment: { readonly at: string }) => boolean
}

/**
 * The day of the page, beside the day on which the animal went home.
 *
 * @example todayOf(on, plan, file).isFirst // true, on the evening of the discharge
 */
export function todayOf(on: Moment, { discharge }: HomePlan, { clinic: { zone } }: CaseFile): Today {
  const day = dayOf({ at: on.at, zone })
  return {
    at: on.at,
    day,
    isFirst: day <= dayOf({ at: discharge.at, zone }),
    isDayOf: ({ at }) => dayOf({ at, zone }) === day,
  }
}
