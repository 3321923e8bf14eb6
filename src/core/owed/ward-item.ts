import type { Line } from '#core/journal/fold.ts'
import type { WardSpan } from '#core/procedures/follow-up.ts'
import { instantAfter } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import type { Stay } from '#core/ward/stay.ts'
import { windowOf } from './follow-up.ts'
import { rootOf, timesWritten } from './operations.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { earlierOf, type Setting } from './setting.ts'

export type Look = Pick<Line, 'at' | 'header'>

/** What is owed in the ward says this of itself; who it belongs to and when it ends follow from the stay. */
export type WardItem = Pick<OwedItem, 'what' | 'who' | 'way' | 'dueBy' | 'why' | 'facts'> & {
  readonly dueFrom: string
  /** What it is counted from; null: from the end of the operation. */
  readonly last: Look | null
  /** What several items of one kind are told apart by: a side, a line of the plan. */
  readonly of?: string
  readonly about?: OwedItem['about']
  readonly side?: OwedItem['side']
}

/** Something owed as long as the animal lies in the ward. The next one is another item, counted from the one done. */
export function wardItem(one: WardItem, stay: Stay, setting: Setting): Draft {
  const { last, of, ...rest } = one
  const operation = stay.operations.at(-1)?.id ?? null
  const from = last ? rootOf(setting.file.theCase, last.header.id) : (operation ?? '')
  const item: OwedItem = {
    about: {},
    side: null,
    ...rest,
    id: [one.what, ...(of === undefined ? [] : [of]), from].join(':'),
    person: null,
    operation,
    dueFrom: earlierOf(one.dueFrom, one.dueBy),
    zone: setting.zone,
    precision: 'minute',
    withOwner: true,
    revision: setting.revision + revisionOf(last, stay, setting),
  }
  return { item, ended: stay.ended ? { because: 'not-needed', by: stay.ended.by } : null }
}

/** Whatever may have moved it: corrections of what it is counted from, and of the operation itself. */
function revisionOf(last: Look | null, { operations, since }: Stay, { file: { theCase } }: Setting): number {
  const written = operations.reduce((sum, one) => sum + one.written, 0)
  const stamped = timesWritten(theCase, 'theatre-stamp', ({ at }) => at >= since)
  return (last?.header.supersedes.length ?? 0) + written + stamped
}

export type Round = Omit<WardItem, 'dueFrom' | 'dueBy' | 'why' | 'facts'> & {
  readonly every: WardSpan
  readonly why?: readonly Why[]
}

/** A round of the ward: due so long after the last one, or after the operation ended while there was none. */
export function roundOf({ every, why = [], ...round }: Round, stay: Stay, setting: Setting): Draft {
  const window = windowOf({ window: setting.rules.ward.every[every] }, `owed.ward.${every}`, setting)
  const start = { at: round.last?.at ?? stay.since, zone: setting.zone }
  const counted: Why = round.last
    ? { code: 'ward-last', about: { when: sayInstant(start.at, setting) } }
    : { code: 'ward-never', about: { when: sayInstant(start.at, setting) } }
  return wardItem(
    {
      ...round,
      dueFrom: instantAfter(start, window.span.from),
      dueBy: instantAfter(start, window.span.until),
      why: [counted, ...why, ...window.why],
      facts: [window.fact],
    },
    stay,
    setting,
  )
}

/** The clinic's own clock, with the day. */
export function sayInstant(at: string, { zone }: Pick<Setting, 'zone'>): string {
  return sayMoment({ at, zone, precision: 'minute', by: 'clock' })
}
