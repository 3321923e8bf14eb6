import type { Provenance, Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import type { Period } from '#core/time/calendar-day.ts'
import { surgeonOfEar } from './answerable.ts'
import { rootOf, timesWritten } from './operations.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { dueWithin } from './results.ts'
import type { Setting } from './setting.ts'
import { sideOf } from './specimen-loop.ts'

type Read = Line<BodyOf<'result-read'>>
type Change = Line<BodyOf<'medicine-change'>>

/**
 * A decision to change or stop is worth nothing until the medicines are changed, and a change is worth nothing until the
 * owner has it: both are owed until they are written down.
 */
export function owedMedicineChanges(setting: Setting): Draft[] {
  const { theCase } = setting.file
  return [
    ...theCase.live('result-read').flatMap((read) => toWrite(read, setting)),
    ...theCase.live('medicine-change').map((change) => toTell(change, setting)),
  ]
}

/** Only where something of ours is given, or soon will be: before that the words of the decision are all there is. */
function toWrite(read: Read, setting: Setting): Draft[] {
  const { theCase } = setting.file
  const { decision } = read.body
  if (decision !== 'change' && decision !== 'stop') return []
  const isUnderWay = setting.operations.some(({ done, moment }) => done !== null && moment.at <= read.at)
  if (!isUnderWay && theCase.live('discharge').length === 0) return []
  const side = sideOf(read)
  const item = itemOf(setting, {
    id: `medicine-change-to-write:${rootOf(theCase, read.header.id)}`,
    what: 'medicine-change-to-write',
    from: read.at,
    within: setting.rules.results.changeWithin,
    why: { code: 'change-decided', about: { decision } },
    side,
    way: 'task',
    withOwner: true,
  })
  const root = rootOf(theCase, read.header.id)
  const change = theCase.live('medicine-change').find(({ body }) => body.read && rootOf(theCase, body.read) === root)
  // Not home yet: what it is sent home with is written after the decision and knows it.
  const sentHome = theCase.live('discharge').find((line) => line.at >= read.at && line.header.supersedes.length === 0)
  const by = change ?? sentHome
  return [{ item, ended: by ? settled(by, item) : null }]
}

function toTell(change: Change, setting: Setting): Draft {
  const { theCase } = setting.file
  const item = itemOf(setting, {
    id: `owner-about-medicines:${rootOf(theCase, change.header.id)}`,
    what: 'owner-about-medicines',
    from: change.at,
    within: setting.rules.results.ownerToldWithin,
    why: { code: 'medicines-changed', about: { because: change.body.because } },
    side: null,
    way: 'call',
    withOwner: true,
  })
  // The page of a later change holds this one too: whoever was told of that one was told of all before it.
  const since = theCase.live('medicine-change').filter(({ at }) => at >= change.at)
  const told = theCase
    .live('told')
    .find(
      ({ body, at }) => body.who === 'owner' && at >= change.at && since.some(({ header }) => header.id === body.about),
    )
  return { item, ended: told ? settled(told, item) : null }
}

function settled(by: Pick<Line, 'at' | 'header'>, item: OwedItem): Draft['ended'] {
  return { because: by.at > item.dueBy ? 'settled-late' : 'settled', by: by.header.id }
}

type Wanted = Pick<OwedItem, 'id' | 'what' | 'side' | 'way' | 'withOwner'> & {
  readonly from: string
  readonly within: Sourced<Period>
  readonly why: Why
}

function itemOf(setting: Setting, { from, within, why, ...wanted }: Wanted): OwedItem {
  const written = timesWritten(setting.file.theCase, 'medicine-change', () => true)
  return {
    ...wanted,
    ...dueWithin(from, within, setting.zone),
    about: {},
    who: 'surgeon',
    person: surgeonOfEar(wanted.side, null, setting),
    operation: null,
    why: [why],
    facts: [within as Provenance],
    revision: setting.revision + written,
  }
}
