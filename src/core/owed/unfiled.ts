import type { Provenance } from '#core/evidence/sourced.ts'
import { authorNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { olderVersions } from '#core/journal/older-versions.ts'
import { sayMoment } from '#core/time/moment.ts'
import { surgeonOfEar, writerStillHere } from './answerable.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { dueWithin, labelOf, whyOf } from './results.ts'
import type { Setting } from './setting.ts'
import { type Acted, actedOn, type ResultLine, sideOf } from './specimen-loop.ts'

type TakenAway = { readonly result: ResultLine; readonly by: Line }

/**
 * A report that was taken away, because it was another animal's or wrong, after somebody had acted on it: whoever read
 * it takes the reading back, whoever was told is told again, and a change of medicine is looked at again.
 */
export function owedAfterUnfiling(setting: Setting): Draft[] {
  return takenAway(setting).flatMap((taken) => {
    const { theCase } = setting.file
    const ids = [taken.result.header.id, ...olderVersions(taken.result.header.id, theCase)]
    return [
      ...readingsOf(ids, setting).map((read) => toHear(read, taken, setting)),
      ...actedOn(ids, theCase).flatMap((acted) => {
        if (acted.what === 'read') return []
        return [acted.what === 'changed' ? toReview(acted, taken, setting) : toTellAgain(acted, taken, setting)]
      }),
    ]
  })
}

function takenAway({ file: { theCase } }: Setting): TakenAway[] {
  return (theCase.lines as readonly ResultLine[]).flatMap((result) => {
    if (result.header.kind !== 'specimen-result' || result.state !== 'withdrawn' || !result.known) return []
    const by = result.withdrawnBy.map((id) => theCase.line(id)).find((line) => line?.state === 'live')
    return by && result.body !== null ? [{ result, by }] : []
  })
}

/** Also readings that were taken back: then nothing is left of them but that it was settled. */
function readingsOf(results: readonly string[], { file: { theCase } }: Setting): Line<BodyOf<'result-read'>>[] {
  return (theCase.lines as readonly Line<BodyOf<'result-read'> | null>[]).flatMap((line) => {
    const isReading = line.header.kind === 'result-read' && line.known && line.state !== 'superseded'
    return isReading && line.body !== null && results.includes(line.body.result) ? [{ ...line, body: line.body }] : []
  })
}

function toHear(read: Line<BodyOf<'result-read'>>, taken: TakenAway, setting: Setting): Draft {
  const item = itemOf(`unfiled-to-hear:${read.header.id}`, taken, setting, {
    what: 'unfiled-to-hear',
    about: {},
    person: writerStillHere(read, setting),
    way: 'task',
    why: [],
    withOwner: false,
  })
  const [back] = read.withdrawnBy
  return { item, ended: read.state === 'withdrawn' && back ? { because: 'settled', by: back } : null }
}

function toTellAgain(acted: Acted, taken: TakenAway, setting: Setting): Draft {
  const who = acted.what === 'told-owner' ? 'owner' : 'referring-vet'
  const item = itemOf(`told-to-put-right:${acted.line.header.id}`, taken, setting, {
    what: 'told-to-put-right',
    about: { who },
    person: surgeonOf(taken, setting),
    way: 'call',
    why: [whyOf(acted, setting)],
    withOwner: who === 'owner',
  })
  const told = setting.file.theCase
    .live('told')
    .find(({ body }) => body.who === who && body.about === taken.by.header.id)
  return { item, ended: told ? { because: 'settled', by: told.header.id } : null }
}

function toReview(acted: Acted, taken: TakenAway, setting: Setting): Draft {
  const item = itemOf(`change-to-review:${acted.line.header.id}`, taken, setting, {
    what: 'change-to-review',
    about: {},
    person: surgeonOf(taken, setting),
    way: 'task',
    why: [whyOf(acted, setting)],
    withOwner: true,
  })
  const later = setting.file.theCase
    .live('medicine-change')
    .find(({ header, at }) => header.id !== acted.line.header.id && at >= taken.by.at)
  return { item, ended: later ? { because: 'settled', by: later.header.id } : null }
}

function surgeonOf({ result }: TakenAway, setting: Setting): string | null {
  return surgeonOfEar(sideOf(result), labelOf(result.body.specimen, setting).operation, setting)
}

type Wanted = Pick<OwedItem, 'what' | 'about' | 'person' | 'way' | 'why' | 'withOwner'>

function itemOf(id: string, { result, by }: TakenAway, setting: Setting, wanted: Wanted): OwedItem {
  const within = setting.rules.results.readWithin
  const why: Why = {
    code: 'result-taken-away',
    about: {
      by: authorNamed(setting.file, by.header.author),
      on: sayMoment(by.header.happenedAt),
      reason: by.header.reason ?? '',
    },
  }
  return {
    ...wanted,
    ...dueWithin(by.at, within, setting.zone),
    id,
    about: { ...wanted.about, label: labelOf(result.body.specimen, setting).said },
    who: 'surgeon',
    side: sideOf(result),
    operation: null,
    why: [why, ...wanted.why],
    facts: [within as Provenance],
    revision: setting.revision,
  }
}
