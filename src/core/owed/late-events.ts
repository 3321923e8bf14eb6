import type { BodyOf, Line } from '#core/journal/fold.ts'
import { isOfEar, rootOf } from './operations.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { dueWithin } from './results.ts'
import { laterOf, type Setting } from './setting.ts'

type LateEvent = Line<BodyOf<'late-event'>>

/** A late swelling, abscess or tract re-opens the index ear: it is looked at, decided on, and its outcome asked again. */
export function owedAfterLateEvents(setting: Setting): Draft[] {
  return setting.file.theCase.live('late-event').flatMap((event) => [look(event, setting), decision(event, setting)])
}

function itemOf(event: LateEvent, setting: Setting, what: 'late-event-look' | 'late-event-decision'): OwedItem {
  const side = event.header.subject.kind === 'ear' ? event.header.subject.side : null
  const within = setting.rules.lateEventWithin
  const why: Why = { code: 'late-event-seen', about: { what: event.body.what, seenBy: event.body.seenBy } }
  return {
    ...dueWithin(knownAt(event), within, setting.zone),
    id: `${what}:${rootOf(setting.file.theCase, event.header.id)}`,
    what,
    about: { event: event.body.what },
    who: 'surgeon',
    person: null,
    way: what === 'late-event-look' ? 'visit' : 'task',
    side,
    operation: event.body.operation,
    why: [why],
    facts: [within],
    withOwner: true,
    revision: setting.revision,
  }
}

/** When we heard of it: an event of last month that was told today is owed from today. */
function knownAt(event: LateEvent): string {
  return laterOf(event.header.writtenAt, event.at)
}

function look(event: LateEvent, setting: Setting): Draft {
  const item = itemOf(event, setting, 'late-event-look')
  if (event.body.seenBy === 'us') return { item, ended: { because: 'settled', by: event.header.id } }
  const { theCase } = setting.file
  const ears = [...theCase.live('check').filter(({ body }) => body.seenBy === 'us'), ...theCase.live('ear-findings')]
  const seen = ears
    .filter((line) => item.side !== null && isOfEar(line, item.side) && line.at >= event.at)
    .sort((a, b) => (a.at < b.at ? -1 : 1))[0]
  if (!seen) return { item, ended: null }
  return { item, ended: { because: seen.at > item.dueBy ? 'settled-late' : 'settled', by: seen.header.id } }
}

/** Decided when the entry itself says what it needs, or a new operation of the ear was booked since. */
function decision(event: LateEvent, setting: Setting): Draft {
  const item = itemOf(event, setting, 'late-event-decision')
  if (event.body.needed !== 'not-decided') return { item, ended: { because: 'settled', by: event.header.id } }
  const booked = setting.operations.find(({ side, booking }) => side === item.side && booking && booking.at >= event.at)
  return { item, ended: booked?.booking ? { because: 'settled', by: booked.booking.header.id } : null }
}
