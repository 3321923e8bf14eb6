import type { BodyOf, Line } from '#core/journal/fold.ts'
import { instantAfter } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { windowOf } from './follow-up.ts'
import { rootOf, timesWritten } from './operations.ts'
import { isTryOfOurs } from './our-tries.ts'
import type { Draft, Ending, OwedItem, Why } from './owed-item.ts'
import { earlierOf, type Setting } from './setting.ts'

type Referral = Line<BodyOf<'referral'>>
type Written = Pick<Line, 'at' | 'header'>

/**
 * What a first call is owed. An urgent animal is seen within the time of its urgency, and a telephone call alone never
 * settles that. A routine one that nothing follows is rung, again and again, until something does.
 */
export function owedAfterReferrals(setting: Setting): Draft[] {
  const referrals = setting.file.theCase.live('referral')
  const urgent = referrals.filter(({ body }) => body.urgency !== 'routine')
  const routine = referrals.filter(({ body }) => body.urgency === 'routine').slice(-1)
  return [
    ...urgent.map((referral) => toSee(referral, setting)),
    ...routine.map((referral) => waiting(referral, setting)),
  ]
}

function toSee(referral: Referral, setting: Setting): Draft {
  const { urgency, because, reportedSide } = referral.body
  const since = { at: referral.at, zone: setting.zone }
  const window = windowOf({ window: setting.rules.referral[urgency] }, `owed.referral.${urgency}`, setting)
  const spoken = callsSince(referral, setting).findLast(({ body }) => body.reached === 'yes')
  const item = itemOf(referral, setting, {
    what: 'urgent-referral',
    about: { urgency },
    who: 'surgeon',
    way: 'here',
    dueFrom: referral.at,
    dueBy: instantAfter(since, window.span.until),
    why: [
      { code: 'urgent-by-first-call', about: { urgency, when: when(referral), because, reported: reportedSide } },
      ...window.why,
      ...tries(referral, referral.at, setting),
      ...(spoken ? [{ code: 'spoken-not-seen' as const, about: { when: when(spoken) } }] : []),
    ],
    facts: [window.fact],
  })
  return ended(item, looksSince(referral, setting))
}

/** Counted from the first call, and again from every call that reached somebody: an agreement is not yet a visit. */
function waiting(referral: Referral, setting: Setting): Draft {
  const spoken = callsSince(referral, setting).findLast(({ body }) => body.reached === 'yes')
  const start = { at: spoken?.at ?? referral.at, zone: setting.zone }
  const window = windowOf({ window: setting.rules.referral.routine }, 'owed.referral.routine', setting)
  const item = itemOf(referral, setting, {
    what: 'referral-waiting',
    about: {},
    who: 'desk',
    way: 'task',
    dueFrom: instantAfter(start, window.span.from),
    dueBy: instantAfter(start, window.span.until),
    why: [
      { code: 'nothing-after-first-call', about: { when: when(referral) } },
      ...window.why,
      ...tries(referral, start.at, setting),
      ...(spoken ? [{ code: 'spoken-nothing-since' as const, about: { when: when(spoken) } }] : []),
    ],
    facts: [window.fact],
  })
  const { theCase } = setting.file
  const decided: Written[] = [...theCase.live('booking'), ...theCase.live('choice')]
  return ended(item, [...looksSince(referral, setting), ...decided.filter(({ at }) => at >= referral.at)])
}

type Wanted = Pick<OwedItem, 'about' | 'who' | 'way' | 'dueFrom' | 'dueBy' | 'why' | 'facts'> & {
  readonly what: 'urgent-referral' | 'referral-waiting'
}

function itemOf(referral: Referral, setting: Setting, wanted: Wanted): OwedItem {
  const { theCase } = setting.file
  return {
    ...wanted,
    dueFrom: earlierOf(wanted.dueFrom, wanted.dueBy),
    id: `${wanted.what}:${rootOf(theCase, referral.header.id)}`,
    person: null,
    side: null,
    operation: null,
    zone: setting.zone,
    precision: 'minute',
    withOwner: true,
    revision:
      setting.revision +
      referral.header.supersedes.length +
      timesWritten(theCase, 'call', ({ at }) => at >= referral.at),
  }
}

/** A vet looked at the animal: ears, face, fitness for anaesthesia, or an operation. An owner's picture is no look. */
function looksSince(referral: Referral, setting: Setting): Written[] {
  const { theCase } = setting.file
  const looked: Written[] = [
    ...theCase.live('ear-findings'),
    ...theCase.live('baseline'),
    ...theCase.live('anaesthetic-assessment'),
    ...theCase.live('check').filter(({ body }) => body.seenBy === 'us' || body.seenBy === 'referring-vet'),
    ...theCase.live('operation-summary'),
  ]
  return looked.filter(({ at }) => at >= referral.at)
}

function callsSince(referral: Referral, setting: Setting): Line<BodyOf<'call'>>[] {
  return setting.file.theCase.live('call').filter(({ at }) => at >= referral.at)
}

function tries(referral: Referral, since: string, setting: Setting): Why[] {
  const failed = callsSince(referral, setting).filter(({ at, body }) => at >= since && isTryOfOurs(body))
  return failed.length === 0 ? [] : [{ code: 'tried-without-answer', about: { tries: String(failed.length) } }]
}

function when({ at, header }: Written): string {
  return sayMoment({ ...header.happenedAt, at })
}

function ended(item: OwedItem, answers: readonly Written[]): Draft {
  const [first] = [...answers].sort((a, b) => (a.at < b.at ? -1 : 1))
  if (!first) return { item, ended: null }
  const because: Ending = first.at > item.dueBy ? 'settled-late' : 'settled'
  return { item, ended: { because, by: first.header.id } }
}
