import { Temporal } from 'temporal-polyfill'
import { sides } from '#core/animal/species.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { isOfEar, rootOf } from './operations.ts'
import type { Draft, OwedItem } from './owed-item.ts'
import { type Setting, wholeDays } from './setting.ts'

type Plan = Line<BodyOf<'skin-plan' | 'other-ear-plan'>>

/** A plan that names a day is looked at again on that day: a newer plan settles it, silence does not. */
export function owedPlanReviews(setting: Setting): Draft[] {
  const { theCase } = setting.file
  const ofEar = (side: 'LEFT' | 'RIGHT') => theCase.live('other-ear-plan').filter((line) => isOfEar(line, side))
  return [
    ...reviews(theCase.live('skin-plan'), 'skin-plan-review', setting),
    ...sides.flatMap((side) => reviews(ofEar(side), 'other-ear-review', setting)),
  ]
}

function reviews(plans: readonly Plan[], what: 'skin-plan-review' | 'other-ear-review', setting: Setting): Draft[] {
  return plans.flatMap((plan, place): Draft[] => {
    if (plan.body.reviewOn === null) return []
    const item = review(plan, plan.body.reviewOn, what, setting)
    const newer = plans[place + 1] ?? operatedSince(plan, item.side, setting)
    return [{ item, ended: newer ? { because: 'settled', by: newer.header.id } : null }]
  })
}

/** An ear that was booked for its own operation since has a plan of another kind. */
function operatedSince(plan: Plan, side: OwedItem['side'], setting: Setting): Pick<Plan, 'header'> | undefined {
  const booked = setting.operations.find((one) => one.side === side && one.booking && one.booking.at > plan.at)
  return booked?.booking ?? undefined
}

function review(plan: Plan, day: string, what: 'skin-plan-review' | 'other-ear-review', setting: Setting): OwedItem {
  const { subject } = plan.header
  const on = isDay(day) ? day : dayOf({ at: plan.at, zone: setting.zone })
  const { moved, ...due } = wholeDays({ from: on, until: on }, setting.zone)
  return {
    ...due,
    id: `${what}:${rootOf(setting.file.theCase, plan.header.id)}`,
    what,
    about: {},
    who: 'surgeon',
    person: null,
    way: 'task',
    side: subject.kind === 'ear' ? subject.side : null,
    operation: null,
    why: [{ code: 'review-set', about: { day } }, ...moved],
    facts: [],
    withOwner: true,
    revision: setting.revision + plan.header.supersedes.length,
  }
}

/** A day that no calendar has (30 February) is looked at at once. */
function isDay(day: string): boolean {
  try {
    return Temporal.PlainDate.from(day).toString() === day
  } catch {
    return false
  }
}
