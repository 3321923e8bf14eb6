import { isAbout } from '#core/journal/lines-about.ts'
import { shoutsOf } from '#core/theatre/shouts.ts'
import { signOutOf } from '#core/theatre/sign-out.ts'
import { doneAt } from '#core/theatre/stamps.ts'
import { dayOf, endOfDay } from '#core/time/calendar-day.ts'
import { anaestheticOf } from './one-anaesthetic.ts'
import { type OperationOnFile, rootOf, timesWritten } from './operations.ts'
import type { Draft, OwedItem } from './owed-item.ts'
import type { Setting } from './setting.ts'

/** What theatre leaves behind: an operation that nobody signed out, and an owner who has not heard of an emergency. */
export function owedAfterTheatre(operation: OperationOnFile, setting: Setting): Draft[] {
  return [...toSignOut(operation, setting), ...toTell(operation, setting)]
}

/** The tube is out, so the animal is leaving. Once it went home, the moment has passed: the report goes on saying so. */
function toSignOut(operation: OperationOnFile, setting: Setting): Draft[] {
  const { theCase } = setting.file
  // Both ears under one anaesthetic have one tube.
  const out = anaestheticOf(operation, setting.operations, theCase)
    .flatMap((one) => doneAt(theCase, one, 'tube-out') ?? [])
    .sort()[0]
  if (out === undefined || !operation.done) return []
  const { state, stamp, unsettled } = signOutOf(theCase, operation.id)
  const points = String(unsettled.length)
  const item = {
    ...itemOf(operation, 'sign-out', setting),
    who: 'surgeon',
    way: 'task',
    dueFrom: out,
    dueBy: out,
    why: [
      state === 'in-doubt'
        ? { code: 'signed-out-in-doubt', about: { points } }
        : { code: 'tube-out-not-signed-out', about: { points } },
    ],
    facts: [setting.rules.signOut],
    withOwner: false,
  } as const satisfies OwedItem
  if (state === 'signed-out' && stamp) {
    return [{ item, ended: { because: stamp.at > out ? 'settled-late' : 'settled', by: stamp.header.id } }]
  }
  const home = theCase.live('discharge').find(({ at }) => at >= out)
  return [{ item, ended: home ? { because: 'too-late', by: home.header.id } : null }]
}

/** One telling for all emergencies of an operation; one that comes after it is told anew. */
function toTell(operation: OperationOnFile, setting: Setting): Draft[] {
  const { theCase } = setting.file
  const shouts = shoutsOf(theCase, operation.id)
  const last = shouts.at(-1)
  const first = shouts[0]
  if (!first || !last) return []
  const begun = new Set(shouts.map((one) => rootOf(theCase, one.begun.header.id)))
  const told = theCase
    .live('told')
    .find(({ at, body }) => body.who === 'owner' && begun.has(rootOf(theCase, body.about)) && at >= last.begun.at)
  const dueBy = endOfDay(dayOf({ at: last.begun.at, zone: setting.zone }), setting.zone)
  const item = {
    ...itemOf(operation, 'owner-about-emergency', setting),
    who: 'surgeon',
    way: 'call',
    dueFrom: first.begun.at,
    dueBy,
    why: [...new Set(shouts.map(({ call }) => call))].map((call) => ({
      code: 'emergency-in-theatre',
      about: { call },
    })),
    facts: [setting.rules.emergencyTold],
    withOwner: true,
  } as const satisfies OwedItem
  if (!told) return [{ item, ended: null }]
  return [{ item, ended: { because: told.at > dueBy ? 'settled-late' : 'settled', by: told.header.id } }]
}

function itemOf({ id, side }: OperationOnFile, what: 'sign-out' | 'owner-about-emergency', setting: Setting) {
  const { theCase } = setting.file
  const stamped = timesWritten(theCase, 'theatre-stamp', (line) => isAbout(line, id))
  return {
    id: `${what}:${id}`,
    what,
    about: {},
    person: null,
    side,
    operation: id,
    zone: setting.zone,
    precision: 'minute',
    revision: setting.revision + stamped,
  } as const
}
